/** Signs in over HTTP, as the sign-in page does. */
export async function signIn(
  address: string,
  name: string,
  password: string,
  /** Of the page that the form stands on. */
  origin: string = address,
): Promise<{ status: number; location: string; cookie: string; setCookie: string }> {
  const answer = await fetch(`${address}/sign-in`, {
    method: 'POST',
    redirect: 'manual',
    headers: {
      'content-type': 'application/x-www-form-urlencoded',
      origin,
      'sec-fetch-site': 'same-origin',
    },
    body: new URLSearchParams({ name, password }).toString(),
  })
  await answer.arrayBuffer()
  const setCookie = answer.headers.get('set-cookie') ?? ''
  const location = answer.headers.get('location') ?? ''
  return { status: answer.status, location, cookie: setCookie.split(';')[0] ?? '', setCookie }
}

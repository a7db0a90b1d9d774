/** A photograph is taken or chosen: whoever does one of them takes the other back. */

const sources = [...document.querySelectorAll<HTMLInputElement>('input[type="file"]')]

for (const source of sources) {
  source.addEventListener('change', () => {
    if (source.value === '') return
    for (const other of sources) if (other !== source) other.value = ''
  })
}

export {}

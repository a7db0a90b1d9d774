/** What was typed into the receipt, by field: shown again when it is refused. */
export type ReceiptTyped = Readonly<Record<string, string>>

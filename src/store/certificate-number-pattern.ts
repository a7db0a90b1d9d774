export const numberPattern = /^C-(\d{4})-(\d{4,})-[0-9A-Z]{6}$/

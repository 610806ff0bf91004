/** A node whose name is its number is named once: "VAN-27 VAN-27" is VAN-27. */
export const subjectWords = (label: string): string => label.replace(/^(.+) \1$/, '$1');

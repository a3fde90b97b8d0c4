export { FileButton } from './FileButton'
export { incoming, nextIncoming, receive } from './queue'
export { fileWords, saveFile } from './save-file'
export { useIncoming } from './useIncoming'

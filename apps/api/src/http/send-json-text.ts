type TextReply = { type(contentType: string): unknown }

/** Answers with JSON that is text already, byte for byte; its type is the route's own, which a test checks by parsing it. */
export function sendJsonText(reply: TextReply, text: string): never {
  reply.type('application/json; charset=utf-8')
  return text as never
}

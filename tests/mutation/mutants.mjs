// Every mutant of a file at once: the changed source asks at run time which of its mutants is awake, so that it is compiled
// once. Types, imports and sentences are left alone; a mutant is one operator, one condition, one number or one word of truth.
import ts from 'typescript'

const SWAPPED = new Map([
  [ts.SyntaxKind.LessThanToken, '<='],
  [ts.SyntaxKind.LessThanEqualsToken, '<'],
  [ts.SyntaxKind.GreaterThanToken, '>='],
  [ts.SyntaxKind.GreaterThanEqualsToken, '>'],
  [ts.SyntaxKind.EqualsEqualsEqualsToken, '!=='],
  [ts.SyntaxKind.ExclamationEqualsEqualsToken, '==='],
  [ts.SyntaxKind.PlusToken, '-'],
  [ts.SyntaxKind.MinusToken, '+'],
  [ts.SyntaxKind.AsteriskToken, '/'],
  [ts.SyntaxKind.SlashToken, '*'],
  [ts.SyntaxKind.AmpersandAmpersandToken, '||'],
  [ts.SyntaxKind.BarBarToken, '&&'],
])

/** The mutants of one source: `{ id, line, was, becomes, start, end }`, ids counted from `firstId`. */
export function listMutants(path, text, firstId) {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TS)
  const mutants = []
  const add = (node, becomes) => {
    const [start, end] = [node.getStart(source), node.getEnd()]
    const line = source.getLineAndCharacterOfPosition(start).line + 1
    mutants.push({ id: firstId + mutants.length, path, line, was: text.slice(start, end), becomes, start, end })
  }
  const visit = (node) => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node) || ts.isTypeAliasDeclaration(node)) return
    const becomes = mutated(node, source, text)
    if (becomes !== null) add(node, becomes)
    ts.forEachChild(node, visit)
  }
  visit(source)
  return mutants
}

function mutated(node, source, text) {
  if (ts.isBinaryExpression(node)) return swapped(node, source, text)
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken) {
    return textOf(node.operand, source, text)
  }
  if (ts.isConditionalExpression(node)) {
    const [condition, yes, no] = [node.condition, node.whenTrue, node.whenFalse].map((each) =>
      textOf(each, source, text),
    )
    return `${condition} ? ${no} : ${yes}`
  }
  if (node.kind === ts.SyntaxKind.TrueKeyword) return 'false'
  if (node.kind === ts.SyntaxKind.FalseKeyword) return 'true'
  if (ts.isNumericLiteral(node) && node.parent.name !== node) return `${node.getText(source)} + 1`
  return null
}

/** A sum of words is a sentence; taking words from each other is no mutant worth counting. */
function swapped(node, source, text) {
  const operator = SWAPPED.get(node.operatorToken.kind)
  if (operator === undefined || isText(node.left) || isText(node.right)) return null
  return `${textOf(node.left, source, text)} ${operator} ${textOf(node.right, source, text)}`
}

function isText(node) {
  return ts.isStringLiteralLike(node) || ts.isTemplateExpression(node)
}

function textOf(node, source, text) {
  return text.slice(node.getStart(source), node.getEnd())
}

/** The source with every one of these mutants in it, asleep until `globalThis.awakeMutant` names one. */
export function withMutants(text, mutants) {
  // Inner mutants stand inside outer ones: build from the inside out, each on what its own span has become.
  const build = (start, end, inside) => {
    const top = outermost(inside)
    let built = ''
    let at = start
    for (const { mutant, inner } of top) {
      built += text.slice(at, mutant.start)
      const original = build(mutant.start, mutant.end, inner)
      built += `(globalThis.awakeMutant === ${mutant.id} ? (${mutant.becomes}) : (${original}))`
      at = mutant.end
    }
    return built + text.slice(at, end)
  }
  return build(0, text.length, mutants)
}

function outermost(mutants) {
  const ordered = [...mutants].sort((a, b) => a.start - b.start || b.end - a.end)
  const found = []
  for (const mutant of ordered) {
    const last = found.at(-1)
    if (last !== undefined && mutant.start >= last.mutant.start && mutant.end <= last.mutant.end)
      last.inner.push(mutant)
    else found.push({ mutant, inner: [] })
  }
  return found
}

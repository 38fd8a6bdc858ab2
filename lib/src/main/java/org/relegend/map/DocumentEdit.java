package org.relegend.map;

/**
 * One change of a document, as a value: what is asked, a label for the undo menu, and a pure
 * function from document to document. Undo needs no inverse, since the earlier document lives on.
 *
 * @param <D> the document
 */
public interface DocumentEdit<D> {
  /** What it does, in a few words, for the undo menu; told from the document it is applied to. */
  String label(D document);

  /**
   * The document with this change made.
   *
   * @throws EditRefusedException where it can't be made; nothing has changed then
   */
  D applyTo(D document) throws EditRefusedException;
}

package org.relegend.viewer.session;

/** What of a session has changed, for whoever shows it. */
public enum Change {
  /** The map, by an edit, undo or redo. */
  MAP,
  /** Which page or photo is shown. */
  PICTURES,
  /** What is chosen, and with it the strip's cards. */
  CHOICE,
  /** Which card of the strip is walked to. */
  CURSOR,
  /** The tool in hand or its state: typed name, half-made package, outline. */
  TOOL,
  /** The evidence in use. */
  EVIDENCE,
  /** A question waits for an answer, or was answered. */
  QUESTION,
  /** A caution waits to be read, or was read. */
  CAUTION,
  /** There is something to say on the status line. */
  NOTICE,
  /** The job that lies over the map, by an edit, or how readings are taken. */
  JOB,
  /** What follows from the twins that are known was worked out anew. */
  TWINS,
  /** Somebody said a twin: what follows from it is of interest. */
  TWINS_SAID,
  /** The predicted places, or which of them is chosen. */
  GHOSTS,
  /** Whether edits are taken. */
  RIGHTS
}

package org.relegend.circuit;

/** A table of kinds that can't be read: says in which file and line, and what was expected. */
public final class KindsException extends Exception {
  private static final long serialVersionUID = 1L;

  KindsException(String message) {
    super(message);
  }

  KindsException(String message, Throwable cause) {
    super(message, cause);
  }
}

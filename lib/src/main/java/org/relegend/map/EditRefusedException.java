package org.relegend.map;

/** An edit that can't be made on this map; the message is a sentence for the user. */
public final class EditRefusedException extends Exception {
  private static final long serialVersionUID = 1L;

  public EditRefusedException(String message) {
    super(message);
  }
}

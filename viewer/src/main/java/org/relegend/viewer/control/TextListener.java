package org.relegend.viewer.control;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Runs something after each change of a text. */
public record TextListener(Runnable changed) implements DocumentListener {
  @Override
  public void insertUpdate(DocumentEvent event) {
    changed.run();
  }

  @Override
  public void removeUpdate(DocumentEvent event) {
    changed.run();
  }

  @Override
  public void changedUpdate(DocumentEvent event) {}
}

package org.relegend.viewer.ui;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Runs something after each change of a text. */
record TextListener(Runnable changed) implements DocumentListener {
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

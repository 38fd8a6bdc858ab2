package org.relegend.viewer.ui;

import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;

/** A field in which what is typed is text: keys that are commands elsewhere don't leave it. */
class TypedField extends JTextField {
  TypedField(int columns) {
    super(columns);
  }

  TypedField() {
    this(0);
  }

  @Override
  protected boolean processKeyBinding(
      KeyStroke stroke, KeyEvent event, int condition, boolean pressed) {
    boolean done = super.processKeyBinding(stroke, event, condition, pressed);
    return done || condition == JComponent.WHEN_FOCUSED && isText(event);
  }

  private static boolean isText(KeyEvent event) {
    return !event.isControlDown()
        && !event.isAltDown()
        && !event.isMetaDown()
        && event.getKeyChar() != KeyEvent.CHAR_UNDEFINED
        && !Character.isISOControl(event.getKeyChar());
  }
}

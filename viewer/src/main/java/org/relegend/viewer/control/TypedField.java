package org.relegend.viewer.control;

import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;

/**
 * A field in which what is typed is text: keys that are commands elsewhere don't leave it. And a
 * letter whose key went down elsewhere is no text: it was the command, or the answer, that brought
 * the keyboard here.
 */
public class TypedField extends JTextField {
  private boolean pressedHere;

  public TypedField(int columns) {
    super(columns);
  }

  public TypedField() {
    this(0);
  }

  /** Whether what is typed is taken, as the field is now. */
  public boolean takes(KeyEvent event) {
    return true;
  }

  @Override
  protected void processKeyEvent(KeyEvent event) {
    if (event.getID() == KeyEvent.KEY_PRESSED) {
      pressedHere = true;
    }
    if (event.getID() == KeyEvent.KEY_TYPED && !(pressedHere && takes(event))) {
      event.consume();
    } else {
      super.processKeyEvent(event);
    }
  }

  @Override
  protected void processFocusEvent(FocusEvent event) {
    if (event.getID() == FocusEvent.FOCUS_GAINED) {
      pressedHere = false;
    }
    super.processFocusEvent(event);
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

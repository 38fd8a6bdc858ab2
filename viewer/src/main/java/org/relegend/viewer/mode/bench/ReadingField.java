package org.relegend.viewer.mode.bench;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.function.Predicate;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.TypedField;

/**
 * Takes readings while probing. Only what can begin a number begins one here, so that all commands
 * of one letter and the arrows work on while it has the keyboard and is empty.
 */
public final class ReadingField extends TypedField {
  private static final String BEGINS = "0123456789+-.,\u2212";

  /**
   * @param taken takes what was typed; false where it can't be read, and then it stays
   * @param then is run after it was taken
   */
  public ReadingField(Predicate<String> taken, Runnable then) {
    super(12);
    setName("reading");
    putClientProperty("FlatLaf.styleClass", "h3");
    putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, Messages.of("reading.hint"));
    getAccessibleContext().setAccessibleName(Messages.of("reading.name"));
    getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "take");
    getActionMap()
        .put(
            "take",
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                if (taken.test(getText())) {
                  setText("");
                  then.run();
                } else {
                  selectAll();
                }
              }
            });
    getInputMap().put(KeyStroke.getKeyStroke("ESCAPE"), "drop");
    getActionMap()
        .put(
            "drop",
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                setText("");
              }
            });
  }

  /** While empty, what begins no number goes on to the window's commands. */
  @Override
  public boolean takes(KeyEvent event) {
    boolean begins =
        event.getKeyChar() != KeyEvent.CHAR_UNDEFINED
            && BEGINS.indexOf(event.getKeyChar()) >= 0
            && !event.isControlDown()
            && !event.isAltDown();
    return begins || !getText().isEmpty();
  }

  @Override
  protected boolean processKeyBinding(
      KeyStroke stroke, KeyEvent event, int condition, boolean pressed) {
    boolean command = condition == WHEN_FOCUSED && !takes(event);
    return !command && super.processKeyBinding(stroke, event, condition, pressed);
  }
}

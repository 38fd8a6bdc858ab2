package org.relegend.viewer.ui;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.TextListener;
import org.relegend.viewer.control.TypedField;
import org.relegend.viewer.control.UserAction;

/** The one field on top: finds, names what is placed, takes the typed line of a trace. */
final class FindField extends TypedField {
  private static final Set<KeyStroke> WALKING =
      Stream.of(
              UserAction.NEXT_CARD,
              UserAction.PREVIOUS_CARD,
              UserAction.FIRST_CARD,
              UserAction.LAST_CARD)
          .map(UserAction::key)
          .flatMap(Optional::stream)
          .collect(Collectors.toUnmodifiableSet());

  private boolean telling = true;

  FindField() {
    setName("find");
    putClientProperty("FlatLaf.styleClass", "large");
    putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
    getAccessibleContext().setAccessibleName(Messages.of("find.name"));
    getAccessibleContext().setAccessibleDescription(Messages.of("find.description"));
  }

  void setHint(String hint) {
    putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, hint);
  }

  /** Calls back with the text after each change by the technician. */
  void onTyped(Consumer<String> listener) {
    getDocument().addDocumentListener(new TextListener(() -> tell(listener)));
  }

  private void tell(Consumer<String> listener) {
    if (telling) {
      listener.accept(getText());
    }
  }

  /** Puts a text there, all of it selected, so that typing replaces it; nobody is told. */
  void offer(String text) {
    if (!text.equals(getText())) {
      telling = false;
      setText(text);
      telling = true;
    }
    selectAll();
  }

  /** While it is empty, what would move in the text walks along the strip, as elsewhere. */
  @Override
  protected boolean processKeyBinding(
      KeyStroke stroke, KeyEvent event, int condition, boolean pressed) {
    boolean walks = getText().isEmpty() && WALKING.contains(stroke);
    return !walks && super.processKeyBinding(stroke, event, condition, pressed);
  }

  /** Binds a key that is pressed in the field. */
  void onKey(String key, Runnable deed) {
    KeyStroke stroke = KeyStroke.getKeyStroke(key);
    getInputMap().put(stroke, key);
    getActionMap()
        .put(
            key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                deed.run();
              }
            });
  }
}

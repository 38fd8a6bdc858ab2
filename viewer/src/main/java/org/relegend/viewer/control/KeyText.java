package org.relegend.viewer.control;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Keys as people read them. */
public final class KeyText {
  private static final List<String> WINDOW_KEYS =
      List.of(
          "LEFT",
          "RIGHT",
          "UP",
          "DOWN",
          "HOME",
          "END",
          "PAGE_UP",
          "PAGE_DOWN",
          "ENTER",
          "ESCAPE",
          "F6");

  private static final int NOT_PLAIN =
      InputEvent.CTRL_DOWN_MASK | InputEvent.ALT_DOWN_MASK | InputEvent.META_DOWN_MASK;

  private KeyText() {}

  /**
   * Takes keys away that Swing gives to split and scroll panes around whatever has the keyboard:
   * here they belong to the whole window.
   */
  public static void freeIn(JComponent pane) {
    InputMap keys = pane.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    for (String key : WINDOW_KEYS) {
      keys.put(KeyStroke.getKeyStroke(key), "none");
      keys.put(KeyStroke.getKeyStroke("ctrl " + key), "none");
      keys.put(KeyStroke.getKeyStroke("shift " + key), "none");
    }
  }

  /** As in "Ctrl+Shift+P". */
  public static String text(KeyStroke key) {
    List<String> words = new ArrayList<>();
    String modifiers = InputEvent.getModifiersExText(key.getModifiers());
    if (!modifiers.isEmpty()) {
      words.add(modifiers);
    }
    words.add(name(key.getKeyCode()));
    return String.join("+", words);
  }

  /** The stroke of Alt and a key that is a letter or digit, with Shift or not; else empty. */
  public static String textWithAlt(KeyStroke key) {
    boolean plain = (key.getModifiers() & NOT_PLAIN) == 0;
    boolean typed = key.getKeyCode() < 128 && Character.isLetterOrDigit(key.getKeyCode());
    String shift = key.getModifiers() == 0 ? "" : "shift ";
    return plain && typed ? "alt " + shift + KeyEvent.getKeyText(key.getKeyCode()) : "";
  }

  private static String name(int code) {
    return switch (code) {
      case KeyEvent.VK_PLUS -> "+";
      case KeyEvent.VK_MINUS -> "\u2212";
      case KeyEvent.VK_LEFT -> "\u2190";
      case KeyEvent.VK_RIGHT -> "\u2192";
      case KeyEvent.VK_UP -> "\u2191";
      case KeyEvent.VK_DOWN -> "\u2193";
      case KeyEvent.VK_ESCAPE -> "Esc";
      default -> KeyEvent.getKeyText(code);
    };
  }
}

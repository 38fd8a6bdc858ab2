package org.relegend.viewer.control;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import org.relegend.viewer.session.Notice;

/** Every text of the window, from one resource bundle that can be translated. */
public final class Messages {
  private static final ResourceBundle BUNDLE =
      ResourceBundle.getBundle("org.relegend.viewer.ui.messages");

  private Messages() {}

  /**
   * A text as it stands.
   *
   * @throws java.util.MissingResourceException where the bundle has no such key
   */
  public static String of(String key) {
    return BUNDLE.getString(key);
  }

  /** A text with its placeholders filled. */
  public static String of(String key, Object... arguments) {
    return new MessageFormat(of(key), Locale.getDefault()).format(arguments);
  }

  /** What a session says. */
  public static String of(Notice notice) {
    return of("notice." + word(notice.kind()), notice.arguments().toArray());
  }

  /** The part of a key that a constant gives: NET_JOINED, net_joined. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}

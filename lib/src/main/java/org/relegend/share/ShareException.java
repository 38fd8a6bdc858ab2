package org.relegend.share;

import java.io.Serial;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.relegend.map.NameRules;

/**
 * A pack that can't be made or isn't taken. The message is one line for the user: which file, what
 * is wrong with it, what to do. Nothing was written then.
 */
public final class ShareException extends Exception {
  @Serial private static final long serialVersionUID = 1L;

  public ShareException(Path file, String trouble) {
    this(file, trouble, null);
  }

  /**
   * @param trouble what is wrong and what to do, to stand behind the path
   */
  public ShareException(Path file, String trouble, @Nullable Throwable cause) {
    super(oneLine(file) + ": " + trouble, cause);
  }

  private static String oneLine(Path file) {
    return NameRules.spelledOut(file.toString());
  }
}

package org.relegend.scan;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * A picture file that can't be used. The message is one line for the user: which file, what is
 * wrong, what to do. The file itself is left as it was.
 */
public final class PictureException extends Exception {
  private static final long serialVersionUID = 1L;

  /** What sort of trouble it is. */
  public enum Kind {
    /** It isn't there, or the system doesn't let it be read. */
    UNREADABLE,
    /** It holds nothing. */
    EMPTY,
    /** It isn't of a kind that can be read here. */
    UNKNOWN_FORMAT,
    /** It ends too early, or its content contradicts itself. */
    DAMAGED,
    /** It has more pixels or pages than can be handled. */
    TOO_LARGE,
    /** It asks for a password, or its owner forbids to take text from it. */
    LOCKED,
    /** It has no such page. */
    NO_SUCH_PAGE,
    /** What was to be made of it can't be written. */
    NOT_WRITTEN
  }

  private final Kind kind;
  private final transient Path path;

  /**
   * A picture and its trouble.
   *
   * @param trouble what is wrong and what to do, to stand behind the path
   */
  public PictureException(Kind kind, Path path, String trouble, @Nullable Throwable cause) {
    super(oneLine(path + ": " + trouble), cause);
    this.kind = kind;
    this.path = path;
  }

  public PictureException(Kind kind, Path path, String trouble) {
    this(kind, path, trouble, null);
  }

  public Kind kind() {
    return kind;
  }

  public Path path() {
    return path;
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\p{Cntrl}+", " ").strip();
  }
}

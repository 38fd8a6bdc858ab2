package org.relegend.store;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.relegend.map.NameRules;

/**
 * A file that can't be read or written. The message is one line for the user: which file, where in
 * it, what is wrong and what to do. What was on disk before is still there.
 */
public final class StoreException extends Exception {
  private static final long serialVersionUID = 1L;

  /** What sort of trouble it is, for programs that go on differently. */
  public enum Kind {
    /** The file or folder isn't there. */
    MISSING,
    /** Something is there already that would be overwritten. */
    EXISTS,
    /** The content isn't what it should be. */
    BAD_CONTENT,
    /** Written by a later version of the program. */
    NEWER_FORMAT,
    /** The system doesn't allow it. */
    NO_RIGHTS,
    /** No room left. */
    DISK_FULL,
    /** Another program has the map open for editing, or it was opened for reading only. */
    READ_ONLY,
    /** Somebody else changed the file since it was read. */
    CHANGED_ON_DISK,
    /** Any other failure of the disk. */
    FAILED
  }

  private final Kind kind;
  private final transient Path path;

  public StoreException(Kind kind, Path path, String trouble) {
    this(kind, path, trouble, null);
  }

  /**
   * @param trouble what is wrong and what to do, to stand behind the path
   */
  public StoreException(Kind kind, Path path, String trouble, @Nullable Throwable cause) {
    super(printable(path) + ": " + trouble, cause);
    this.kind = kind;
    this.path = path;
  }

  /** The path as one line, whatever its name holds. */
  static String printable(Path path) {
    StringBuilder out = new StringBuilder();
    String text = path.toString();
    for (int i = 0; i < text.length(); i += NameRules.MAX_LENGTH) {
      out.append(
          NameRules.printable(
              text.substring(i, Math.min(text.length(), i + NameRules.MAX_LENGTH))));
    }
    return out.toString();
  }

  public Kind kind() {
    return kind;
  }

  public Path path() {
    return path;
  }
}

package org.relegend.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.map.BoardMap;
import org.relegend.map.EditHistory;
import org.relegend.map.EditRefusedException;

/**
 * What a journal that was left behind says of a map.
 *
 * @param history the map with the journal's edits made, which can be undone
 * @param goodBytes how much of the journal is whole lines that could be used
 * @param usable whether all of it could be used, but for a last line cut off in writing
 */
record JournalReplay(EditHistory history, int goodBytes, boolean usable, List<String> notices) {
  /** No journal, or none that says anything. */
  static JournalReplay none(BoardMap map) {
    return new JournalReplay(new EditHistory(map), 0, true, List.of());
  }

  /**
   * Replays the journal in a folder, if there is one.
   *
   * @param follows digest of the file that the map was read from
   * @throws StoreException where there is one that can't be read at all
   */
  static JournalReplay of(Path journal, BoardMap map, String follows) throws StoreException {
    Optional<byte[]> bytes = LoadedDocument.bytes(journal);
    return bytes.isEmpty() || bytes.get().length == 0
        ? none(map)
        : new Pass(bytes.get(), map, follows).replay();
  }

  /** One pass over the bytes of a journal. */
  private static final class Pass {
    private final byte[] bytes;
    private final BoardMap map;
    private final String follows;
    private final List<JournalLine> lines = new ArrayList<>();
    private int at;

    Pass(byte[] bytes, BoardMap map, String follows) {
      this.bytes = bytes;
      this.map = map;
      this.follows = follows;
    }

    JournalReplay replay() {
      JournalText.Head head;
      try {
        int end = endOfLine();
        if (end < 0) {
          return none(map); // killed while the very first line was written: no edit was noted yet
        }
        head = JournalText.head(bytes, 0, end);
        at = end + 1;
      } catch (IOException e) {
        return foreign("can't be read");
      }
      boolean whole = readLines();
      int start = head.follows().equals(follows) ? 0 : afterSaving();
      if (start < 0) {
        return foreign("belongs to another version of the map");
      }
      return take(lines.subList(start, lines.size()), whole);
    }

    /** Reads lines up to the end or the first unreadable one; tells whether that was the end. */
    private boolean readLines() {
      try {
        for (int end = endOfLine(); end >= 0; end = endOfLine()) {
          lines.add(JournalText.line(bytes, at, end));
          at = end + 1;
        }
        return true;
      } catch (IOException e) {
        return false;
      }
    }

    private int endOfLine() {
      for (int i = at; i < bytes.length; i++) {
        if (bytes[i] == '\n') {
          return i;
        }
      }
      return -1;
    }

    /** Where the edits begin that came after the map file as it is now was written; -1 if never. */
    private int afterSaving() {
      for (int i = lines.size() - 1; i >= 0; i--) {
        if (lines.get(i).step() instanceof JournalLine.SaveBegun saving
            && saving.digest().equals(follows)) {
          return i + 1;
        }
      }
      return -1;
    }

    private JournalReplay foreign(String why) {
      return new JournalReplay(
          new EditHistory(map),
          0,
          false,
          List.of(
              "A journal of unsaved edits was found that %s; it is kept in the folder under another name."
                  .formatted(why)));
    }

    private JournalReplay take(List<JournalLine> taken, boolean whole) {
      EditHistory history = new EditHistory(map);
      int steps = 0;
      Instant last = Instant.EPOCH;
      boolean usable = whole;
      for (JournalLine line : taken) {
        try {
          history = line.step().takenOn(history);
        } catch (EditRefusedException e) {
          usable = false;
          break;
        }
        if (!(line.step() instanceof JournalLine.SaveBegun)) {
          steps++;
          last = line.at();
        }
      }
      return new JournalReplay(history, at, usable, notices(steps, last, usable));
    }

    private List<String> notices(int steps, Instant last, boolean usable) {
      List<String> notices = new ArrayList<>();
      if (steps > 0) {
        notices.add(
            "%d unsaved steps, the last of %s, were recovered from a session that was interrupted. Save to keep them."
                .formatted(steps, last));
      }
      if (!usable) {
        notices.add(
            "Some unsaved edits could not be recovered; the journal is kept in the folder under"
                + " another name.");
      } else if (at < bytes.length) {
        notices.add("The very last step was cut off in writing and is lost.");
      }
      return notices;
    }
  }
}

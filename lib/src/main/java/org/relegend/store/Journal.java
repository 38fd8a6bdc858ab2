package org.relegend.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.EditHistory;
import org.relegend.map.EditRefusedException;
import org.relegend.store.JournalLine.Step;

/**
 * The edits made since the last save, one line each, on the disk as soon as they are made. It keeps
 * a history of its own, which is what a replay of the file would give; a step after which that
 * doesn't equal the true map (an undo back beyond the last save) is written as the difference.
 */
final class Journal implements AutoCloseable {
  private final Path file;
  private final Clock clock;

  /** What a replay of the file gives. */
  private EditHistory replayed;

  /** Digest of the map file that the journal begins at. */
  private String follows;

  private @Nullable FileChannel out;

  /** Length of the file up to the end of its last whole line. */
  private long length;

  Journal(Path file, Clock clock, String follows, JournalReplay replay) {
    this.file = file;
    this.clock = clock;
    this.follows = follows;
    this.replayed = new EditHistory(replay.history().current());
    this.length = replay.goodBytes();
  }

  /**
   * Notes a step and waits until it is on the disk.
   *
   * @param after the map after it
   */
  synchronized void note(Step step, BoardMap after) throws StoreException {
    BoardMap before = replayed.current();
    Step result = step;
    try {
      replayed = step.takenOn(replayed);
    } catch (EditRefusedException e) {
      replayed = new EditHistory(before); // then the difference is told, below
    }
    if (!replayed.current().equals(after)) {
      result = JournalLine.Changed.between(before, after);
      replayed = new EditHistory(after);
    }
    try {
      append(List.of(result));
    } catch (StoreException e) {
      replayed = new EditHistory(before);
      throw e;
    }
  }

  /** Notes that the map file is about to be replaced, so that a kill in between loses nothing. */
  synchronized void saving(String digest, BoardMap saved) throws StoreException {
    if (length == 0) {
      return;
    }
    List<Step> steps = new ArrayList<>();
    steps.add(new JournalLine.SaveBegun(digest));
    BoardMap now = replayed.current();
    if (!now.equals(saved)) {
      steps.add(JournalLine.Changed.between(saved, now)); // edits went on while the map was written
      replayed = new EditHistory(now);
    }
    append(steps);
  }

  /** Begins anew after the map file was replaced; edits that aren't in it are kept. */
  synchronized void saved(String digest, BoardMap saved) throws StoreException {
    BoardMap now = replayed.current();
    boolean more = length > 0 && !now.equals(saved);
    follows = digest;
    replayed = new EditHistory(more ? now : saved);
    if (more) {
      restart(JournalLine.Changed.between(saved, now));
    } else {
      discard();
    }
  }

  /** Puts a journal with this one step in the place of the old one, never leaving a gap. */
  synchronized void restart(Step only) throws StoreException {
    close();
    byte[] bytes = bytes(List.of(only), true);
    Path fresh = file.resolveSibling(file.getFileName() + ".tmp");
    try {
      DiskOperations.REAL.write(fresh, bytes);
      DiskOperations.REAL.move(fresh, file);
      length = bytes.length;
    } catch (IOException e) {
      throw DiskErrors.writing(e, file);
    }
  }

  /** Removes the journal: there is nothing in it that is worth keeping. */
  synchronized void discard() throws StoreException {
    close();
    try {
      Files.deleteIfExists(file);
      length = 0;
    } catch (IOException e) {
      throw DiskErrors.writing(e, file);
    }
  }

  private void append(List<? extends Step> steps) throws StoreException {
    byte[] bytes = bytes(steps, length == 0);
    try {
      FileChannel channel = channel();
      channel.truncate(length); // a line cut off by an earlier failure
      channel.position(length);
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(false);
      length += bytes.length;
    } catch (IOException e) {
      throw DiskErrors.writing(e, file);
    }
  }

  private FileChannel channel() throws IOException {
    FileChannel channel = out;
    if (channel == null) {
      channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      out = channel;
    }
    return channel;
  }

  private byte[] bytes(List<? extends Step> steps, boolean withHead) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    if (withHead) {
      bytes.writeBytes(JournalText.write(new JournalText.Head(follows)));
    }
    for (Step step : steps) {
      bytes.writeBytes(JournalText.write(new JournalLine(clock.instant(), step)));
    }
    return bytes.toByteArray();
  }

  @Override
  public synchronized void close() throws StoreException {
    FileChannel channel = out;
    out = null;
    if (channel != null) {
      try {
        channel.close();
      } catch (IOException e) {
        throw DiskErrors.writing(e, file);
      }
    }
  }
}

package org.relegend.viewer.tile;

import java.io.IOException;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/** Codes tiles on other threads, while more are made; how many wait at once is bounded. */
final class TileEncoder {
  /** Tiles of three bytes a pixel take 0.75 MiB each. */
  private static final int MOST_WAITING = 16;

  /** Takes coded tiles. */
  @FunctionalInterface
  interface Coded {
    void tile(TileKey key, byte[] coded) throws IOException;
  }

  private final Executor threads;
  private final TileFormat coding;
  private final Coded coded;
  private final Semaphore room = new Semaphore(MOST_WAITING);
  private volatile @Nullable IOException problem;

  TileEncoder(Executor threads, TileFormat coding, Coded coded) {
    this.threads = threads;
    this.coding = coding;
    this.coded = coded;
  }

  /** Hands a tile over; waits while too many wait already. */
  void submit(TileKey key, int width, int height, byte[] samples) throws IOException {
    takeRoom(1);
    threads.execute(
        () -> {
          try {
            if (problem == null) {
              coded.tile(key, coding.encode(width, height, samples));
            }
          } catch (IOException trouble) {
            problem = trouble;
          } catch (RuntimeException trouble) {
            problem = new IOException("a tile can't be coded", trouble);
          } catch (OutOfMemoryError full) {
            problem = new IOException("there is too little memory", full);
          } finally {
            room.release();
          }
        });
    rethrow();
  }

  /** Waits until all are coded. */
  void await() throws IOException {
    takeRoom(MOST_WAITING);
    room.release(MOST_WAITING);
    rethrow();
  }

  private void takeRoom(int tiles) {
    try {
      room.acquire(tiles);
    } catch (InterruptedException closing) {
      Thread.currentThread().interrupt();
      throw new CancellationException("the program ends");
    }
  }

  private void rethrow() throws IOException {
    IOException trouble = problem;
    if (trouble != null) {
      throw trouble;
    }
  }
}

package org.relegend.viewer.tile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.relegend.map.BoardId;
import org.relegend.map.BoardTurn;
import org.relegend.map.Page;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Side;
import org.relegend.store.Digests;

/** What tests of sources need: pictures of files, and waiting for what comes in the background. */
final class SourceBench {
  private SourceBench() {}

  static Photo photo(Path file, int width, int height) throws Exception {
    return new Photo(
        new PictureId("top"),
        "",
        file.getFileName().toString(),
        new BoardId("main"),
        Side.COMPONENT,
        BoardTurn.UNKNOWN,
        Digests.sha256(file),
        width,
        height);
  }

  static Page page(Path file, int number, double width, double height) throws Exception {
    return new Page(
        new PictureId("page-" + number),
        "",
        file.getFileName().toString(),
        number,
        Digests.sha256(file),
        width,
        height);
  }

  /** Waits until something holds, looking whenever the source tells of a change. */
  static void until(PictureSource source, BooleanSupplier holds) throws InterruptedException {
    CountDownLatch done = new CountDownLatch(1);
    Runnable look =
        () -> {
          if (holds.getAsBoolean()) {
            done.countDown();
          }
        };
    source.addListener(look);
    look.run();
    assertThat(done.await(60, TimeUnit.SECONDS)).as("status: %s", source.status()).isTrue();
    source.removeListener(look);
  }

  static void untilThere(PictureSource source, TileKey key) throws InterruptedException {
    source.want("test", List.of(key));
    until(source, () -> source.tile(key) instanceof TileAnswer.Ready);
  }
}

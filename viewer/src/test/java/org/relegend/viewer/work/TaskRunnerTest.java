package org.relegend.viewer.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class TaskRunnerTest {
  private final BlockingQueue<Runnable> handedOver = new LinkedBlockingQueue<>();
  private final TaskRunner jobs = new TaskRunner("job", 1, handedOver::add);
  private final List<String> heard = new ArrayList<>();

  @AfterEach
  void close() {
    jobs.close();
  }

  @Test
  void result_isDeliveredWhereItIsHandedOver() throws Exception {
    BackgroundTask job = jobs.run("counting", watch -> 42, this::done, this::failed);

    next().run();

    assertThat(heard).containsExactly("42");
    assertThat(job.over()).isTrue();
    assertThat(job.label()).isEqualTo("counting");
  }

  @Test
  void failure_isDeliveredWithItsReason() throws Exception {
    jobs.run(
        "reading",
        watch -> {
          throw new IOException("no room left");
        },
        this::done,
        this::failed);
    next().run();
    jobs.run(
        "thinking",
        watch -> {
          throw new IllegalStateException("muddled");
        },
        this::done,
        this::failed);
    next().run();

    assertThat(heard).containsExactly("failed: no room left", "failed: muddled");
  }

  @Test
  void cancelledWhileRunning_stopsAndDeliversNothing() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch cancelled = new CountDownLatch(1);
    BackgroundTask job =
        jobs.run(
            "long",
            watch -> {
              begun.countDown();
              cancelled.await();
              watch.check();
              return 1;
            },
            this::done,
            this::failed);
    begun.await();
    job.cancel();
    cancelled.countDown();
    jobs.run("next", watch -> 2, this::done, this::failed);

    next().run();

    assertThat(heard).containsExactly("2");
    assertThat(handedOver).isEmpty();
  }

  @Test
  void cancelledBeforeDelivery_deliversNothing() throws Exception {
    BackgroundTask job = jobs.run("quick", watch -> 1, this::done, this::failed);
    Runnable delivery = next();
    job.cancel();

    delivery.run();

    assertThat(heard).isEmpty();
  }

  @Test
  void progress_isSeenWithinItsBounds() {
    TaskMonitor watch = new TaskMonitor("w");

    assertThat(watch.at(0.5)).isTrue();
    assertThat(watch.fraction()).isEqualTo(0.5);
    watch.at(7);
    assertThat(watch.fraction()).isEqualTo(1);
    watch.cancel();
    assertThat(watch.at(0.9)).isFalse();
    assertThatThrownBy(watch::check).isInstanceOf(CancellationException.class);
  }

  private Runnable next() throws InterruptedException {
    Runnable delivery = handedOver.poll(30, TimeUnit.SECONDS);
    assertThat(delivery).isNotNull();
    return delivery;
  }

  private void done(Object result) {
    heard.add(String.valueOf(result));
  }

  private void failed(Throwable problem) {
    heard.add("failed: " + problem.getMessage());
  }
}

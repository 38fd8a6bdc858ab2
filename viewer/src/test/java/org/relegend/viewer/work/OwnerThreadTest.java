package org.relegend.viewer.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;

class OwnerThreadTest {
  @Test
  void check_onTheOwningThread_passes() {
    assertThatCode(OwnerThread.current()::check).doesNotThrowAnyException();
  }

  @Test
  void check_onAnotherThread_saysWhoMayAndWhoCalled() {
    OwnerThread owner = OwnerThread.current();
    Throwable refused =
        CompletableFuture.runAsync(owner::check).handle((done, error) -> error.getCause()).join();
    assertThat(refused)
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(Thread.currentThread().getName());
  }
}

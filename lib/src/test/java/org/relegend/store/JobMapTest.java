package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.bench.Job;
import org.relegend.bench.MapLink;
import org.relegend.map.BoardMap;
import org.relegend.map.MapInfo;

class JobMapTest {
  @TempDir private Path folder;

  private JobFolder job(String mapId, String place) throws StoreException {
    MapLink link = new MapLink(mapId, "0".repeat(64), "Sample", place);
    JobFolder.create(folder.resolve("job"), Job.empty("job", link)).close();
    return JobFolder.openReadOnly(folder.resolve("job"));
  }

  private void map(String id) throws StoreException {
    MapFolder.create(folder.resolve("map"), BoardMap.empty(id, MapInfo.titled("Sample"))).close();
  }

  @Test
  void theMapBesideTheJob_isFound() throws StoreException {
    map("sample");
    assertThat(JobMap.of(job("sample", "../map"))).isEqualTo(folder.resolve("map"));
  }

  @Test
  void noMap_andAnotherMap_areToldWithTheirPlace() throws StoreException {
    JobFolder job = job("sample", "../map");
    assertThatThrownBy(() -> JobMap.of(job))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("Sample")
        .hasMessageContaining(folder.resolve("map").toString());
    map("other");
    assertThatThrownBy(() -> JobMap.of(job))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("other");
  }
}

package org.relegend.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TableTest {
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void behavesAsASortedMapThatIsNeverChanged(long seed) {
    Random random = new Random(seed);
    TreeMap<String, Channel> model = new TreeMap<>();
    Table<String, Channel> table = Table.empty();
    for (int i = 0; i < 500; i++) {
      Channel channel = new Channel("c" + random.nextInt(40), "p" + random.nextInt(9), "");
      Table<String, Channel> before = table;
      List<Channel> content = List.copyOf(before);
      if (random.nextInt(3) == 0) {
        table = table.without(channel.name());
        model.remove(channel.name());
      } else if (random.nextInt(10) == 0) {
        List<Channel> many =
            model.values().stream().map(c -> new Channel(c.name(), "x", "")).toList();
        table = table.withAll(many);
        many.forEach(c -> model.put(c.name(), c));
      } else {
        table = table.with(channel);
        model.put(channel.name(), channel);
      }
      assertThat(table).containsExactlyElementsOf(model.values());
      assertThat(List.copyOf(before)).isEqualTo(content);
      assertThat(table.has(channel.name())).isEqualTo(model.containsKey(channel.name()));
    }
  }

  @Test
  void of_twoOfOneKey_isRefused() {
    List<Channel> two = List.of(new Channel("A", "", ""), new Channel("A", "L", ""));
    assertThatThrownBy(() -> Table.of(two)).hasMessageContaining("\"A\" stands twice");
  }
}

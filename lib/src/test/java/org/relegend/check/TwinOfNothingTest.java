package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.check.CheckCase.assertFixed;
import static org.relegend.check.CheckCase.assertQuiet;
import static org.relegend.check.CheckCase.only;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.map.BoardMapSamples.says;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapTables;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.TwinPair;

class TwinOfNothingTest {
  private static final Check CHECK = new TwinOfNothing();

  private static TwinPair twins(String a, String b) {
    return new TwinPair(Subject.parse(a), Subject.parse(b), List.of(says(Evidence.MATCHED)));
  }

  @ParameterizedTest
  @CsvSource({"R1,R9,no R9", "R1.1,R2.8,no R2.8", "R8,R9,no R8 nor R9", "net:VP,net:GONE,no GONE"})
  void fires_forAHalfThatIsMissing(String a, String b, String absent) throws EditRefusedException {
    BoardMap map = divider().with(MapTables.TWINS, Table.of(List.of(twins(a, b))));
    Finding finding = only(CHECK, map);
    assertThat(finding.message()).endsWith("but the map has " + absent);
    assertFixed(CHECK, map, finding);
  }

  @Test
  void isQuiet_whereBothAreThere() {
    assertQuiet(CHECK, divider().with(MapTables.TWINS, Table.of(List.of(twins("R1", "R2")))));
  }
}

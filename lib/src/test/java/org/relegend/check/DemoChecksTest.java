package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.MapInfo;
import org.relegend.table.ImportOptions;
import org.relegend.table.TableException;
import org.relegend.table.TableImport;
import org.relegend.table.TableSort;
import org.relegend.table.TableSource;

/**
 * The demo instrument's circuit is whole, so nothing but places and volts, which its tables don't
 * tell, can be wanting.
 */
class DemoChecksTest {
  @Test
  void demoTables_lackNothingButPlacesAndVolts() throws TableException, EditRefusedException {
    BoardMap empty = BoardMap.empty("demo", MapInfo.titled("Demo"));
    Map<TableSort, TableSource> tables =
        Map.of(
            TableSort.PARTS, resource("/org/relegend/table/parts.csv"),
            TableSort.PINS, resource("/org/relegend/table/pins.csv"));
    BoardMap map =
        TableImport.plan(empty, tables, new ImportOptions("ann", Instant.EPOCH, false))
            .edit()
            .applyTo(empty);
    List<Finding> findings = Checks.inspect(CheckContext.of(map, PictureFiles.asRecorded()));
    assertThat(findings)
        .extracting(Finding::message)
        .containsExactly(
            "The voltage of AC_A, RAW_P, RAW_N, AC_B, 0V, ZP, VP, ZN, VN, A_CTL, A_TIME, B_CTL and"
                + " 50 more is unknown: fed by a winding of T1 whose voltage nobody told",
            "Board main: 0 of 102 parts and 0 of 259 pins are placed on photos, 0 parts on pages; on"
                + " no picture: 102 parts, 259 pins");
  }

  private static TableSource resource(String name) {
    try (InputStream in = DemoChecksTest.class.getResourceAsStream(name)) {
      return new TableSource(name, in.readAllBytes());
    } catch (IOException unreadable) {
      throw new IllegalStateException(name, unreadable);
    }
  }
}

package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.hazard.Cautions;
import org.relegend.hazard.HazardMaps;
import org.relegend.hazard.SupplySketch;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Potential;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.ZoneId;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

class HazardsCommandTest {
  private final Shell shell = new Shell();

  @TempDir private Path temp;

  private Path saved(BoardMap map) throws StoreException {
    Path folder = temp.resolve("map");
    assertThat(shell.run("new", folder, "--title", "Demo").code()).isZero();
    try (MapFolder opened = MapFolder.open(folder)) {
      opened.save(map);
    }
    return folder;
  }

  private static Schema schema() throws IOException {
    try (InputStream in = HazardsCommand.class.getResourceAsStream("hazards.schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
    }
  }

  @Test
  void demo_json_holdsToTheSchemaAndNamesTheMainsPins() throws StoreException, IOException {
    Shell.Run run = shell.run("hazards", saved(HazardMaps.demo()), "--json");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(schema().validate(run.out(), InputFormat.JSON)).isEmpty();
    assertThat(run.out()).contains("\"J1.L\"", "\"T1.2\"", "\"iec-61010\"");
    String reached = run.out().substring(0, run.out().indexOf("\"barriers\""));
    assertThat(reached).doesNotContain("\"T1.3\"").doesNotContain("J1.E");
  }

  @Test
  void demo_text_tellsTheCautionBeforeFigures_andNoTimeOfNothing() throws StoreException {
    Shell.Run run = shell.run("hazards", saved(HazardMaps.demo()));
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains(
            "T1: mains at T1.1 T1.2; kept from T1.3 T1.4 T1.5 T1.6",
            "1000 \u00b5F at 23.1 V: 267 mJ",
            "through R2 (4.7 k\u03a9): never above 60 V by these figures; 1 V after at least 14.8 s;")
        .doesNotContain("at least 0 s")
        .doesNotContainPattern("[0-9]e-[0-9]");
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains(
            "a discharge resistor of 1.5 k\u03a9 has to bear 23.1 V, 356 mW at first and 267 mJ in all, for at least 4.71 s")
        .doesNotContain("in series, unless");
    Cautions.all().forEach(caution -> assertThat(run.out()).contains(caution.title() + ". "));
    assertThat(run.out().lines().mapToInt(String::length).max().orElseThrow())
        .isLessThanOrEqualTo(100);
    assertThat(run.out().indexOf("Unplug first")).isBetween(0, run.out().indexOf("J1.L"));
  }

  @Test
  void unmarkedDanger_isToldAndExitCode1() throws StoreException, IOException {
    BoardMap demo = HazardMaps.demo();
    Path folder = saved(demo.with(MapTables.ZONES, demo.zones().without(new ZoneId("mains-top"))));
    Shell.Run run = shell.run("hazards", folder);
    assertThat(run.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    assertThat(run.out()).contains("UNMARKED: F1.1 on component at 450,180 lies in no mains zone.");
    Shell.Run json = shell.run("hazards", folder, "--json");
    assertThat(schema().validate(json.out(), InputFormat.JSON)).isEmpty();
    assertThat(json.out()).contains("\"proposals\"");
  }

  /** A body of 100 by 100 pixels of which the zone holds the left 35 columns: 65 % lie outside. */
  @Test
  void bodyHalfMarked_isToldWithTheShareOutside() throws StoreException, IOException {
    BoardMap map =
        SupplySketch.of(
                """
                J1 mains-terminal - L=:L N=:N
                T1 transformer - 1=primary:L 2=primary:N 3=secondary:A 4=secondary:B
                """)
            .map();
    Placement body =
        new Placement(
            BoardMapSamples.TOP,
            Subject.parse("T1"),
            1,
            new Point(150, 150),
            square(100, 100, 200, 200),
            List.of(BoardMapSamples.says(Evidence.SEEN)));
    Placement pin =
        new Placement(
            BoardMapSamples.TOP,
            Subject.parse("T1.2"),
            new Point(190, 150),
            BoardMapSamples.says(Evidence.SEEN));
    HazardZone zone =
        new HazardZone(
            new ZoneId("mains-1"),
            BoardMapSamples.TOP,
            HazardZone.Kind.MAINS,
            square(50, 50, 135, 250),
            "",
            List.of(BoardMapSamples.says(Evidence.SEEN)));
    Path folder =
        saved(
            map.with(MapTables.PLACEMENTS, Table.of(List.of(body, pin)))
                .with(MapTables.ZONES, Table.of(List.of(zone))));
    Shell.Run text = shell.run("hazards", folder);
    assertThat(text.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    assertThat(text.out())
        .contains(
            "UNMARKED: 65 % of T1 on component at 150,150 lies in no mains zone.",
            "UNMARKED: T1.2 on component at 190,150 lies in no mains zone.");
    JsonNode unmarked =
        Schemas.valid("hazards", shell.run("hazards", folder, "--json").out()).get("unmarked");
    assertThat(unmarked.get(0).get("outside").asDouble()).isCloseTo(0.65, within(0.01));
    assertThat(unmarked.get(1).get("outside").asDouble()).isEqualTo(1);
  }

  private static List<Point> square(double left, double top, double right, double bottom) {
    return List.of(
        new Point(left, top),
        new Point(right, top),
        new Point(right, bottom),
        new Point(left, bottom));
  }

  /** Everything that can be wrong with a supply at once still holds to the schema. */
  @Test
  void muddledMap_isToldInFull() throws StoreException, IOException {
    BoardMap map = HazardMaps.demo();
    map = HazardMaps.joined(map, "R9", "resistor", "1M", "MAINS_N_IN", "0V");
    map = HazardMaps.joined(map, "C9", "cap", "2n2", "MAINS_L_SW", "AC_A");
    map = HazardMaps.joined(map, "X9", "", "", "MAINS_L_SW", "EARTH");
    map = HazardMaps.with(map, "MAINS_L_IN", Potential.Nature.DC, 0);
    Path folder = saved(map);
    Shell.Run json = shell.run("hazards", folder, "--json");
    assertThat(json.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    assertThat(schema().validate(json.out(), InputFormat.JSON)).isEmpty();
    Shell.Run text = shell.run("hazards", folder, "--limits", "osha");
    assertThat(text.out())
        .contains(
            "LIVE CHASSIS: mains reaches 0V",
            "mains comes round through",
            "29 CFR 1910.303",
            "No voltage is given for MAINS_L_IN",
            "J1.L on MAINS_L_IN brings the mains in");
  }

  @Test
  void unknownLimits_areRefusedWithTheNames() throws StoreException {
    Shell.Run run = shell.run("hazards", saved(HazardMaps.demo()), "--limits", "nosuch");
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err().strip()).contains("iec-61010-wet", "us-navy").doesNotContain("\n");
  }

  @Test
  void emptyMap_claimsNothing() {
    Path folder = temp.resolve("empty");
    shell.run("new", folder, "--title", "Empty");
    Shell.Run run = shell.run("hazards", folder);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("that is not known, not absent");
  }

  /** 1 n at 25 kV: 0.31 J. No resistor bears that, so none is proposed, of whatever ohms. */
  @Test
  void pictureTubesCharge_asksForAProbe_neverForAResistor() throws StoreException, IOException {
    Path folder =
        saved(
            SupplySketch.of(
                    """
                    D1 diode - A=:AC K=:EHT
                    C1 cap 1n 1=:EHT 2=:GND
                    C2 cap 100p_2kV 1=:FOCUS 2=:GND
                    net EHT dc 25000
                    net GND reference
                    """)
                .map());
    String text = shell.run("hazards", folder).out().replaceAll("\\s+", " ");
    assertThat(text)
        .contains("no single resistor is proposed", "made for 25 kV and 313 mJ", "made for 2 kV")
        .doesNotContain("a discharge resistor of");
    Shell.Run json = shell.run("hazards", folder, "--json");
    assertThat(schema().validate(json.out(), InputFormat.JSON)).isEmpty();
    assertThat(json.out())
        .contains("\"dischargeProbe\"", "A probe made for the voltage", "Kilovolts take")
        .doesNotContain("dischargeResistor");
  }

  /** 330 u made for 350 V: 20.2 J; a resistor, but not one alone. */
  @Test
  void flash_asksForResistorsInSeries() throws StoreException, IOException {
    Path folder =
        saved(
            SupplySketch.of(
                    """
                    D1 diode - A=:CONV K=:STORE
                    C1 cap-pol 330u_350V +=:STORE -=:GND
                    R1 resistor 1M 1=:STORE 2=:TRIGGER
                    net GND reference
                    """)
                .map());
    assertThat(shell.run("hazards", folder).out().replaceAll("\\s+", " "))
        .contains("350 V (its rating", "20.2 J", "has to bear 350 V", "into 2 or more of equal");
    Shell.Run json = shell.run("hazards", folder, "--json");
    assertThat(schema().validate(json.out(), InputFormat.JSON)).isEmpty();
    assertThat(json.out()).containsPattern("\"inSeriesAtLeast\" ?: ?2");
  }

  /** What is suspected and what comes in a fault stand apart from what is known. */
  @Test
  void supplyWithoutVolts_isToldAsUnknown_andFaultsInTheirOwnGrade()
      throws StoreException, IOException {
    Path folder =
        saved(
            SupplySketch.of(
                    """
                    J1 mains-terminal - L=:L N=:N
                    J2 connector IEC_inlet_230V 1=:X1 2=:X2
                    T1 transformer - 1=primary:L 2=primary:N 3=secondary:A 4=secondary:B
                    V1 triode - A=:HT G=:G K=:K
                    R1 resistor 10M 1=:PLUS 2=:MINUS
                    BT1 battery 12V_lead-acid +=:BP -=:BM
                    net HT dc 300
                    net PLUS dc 45
                    net MINUS dc -45
                    """)
                .map());
    Shell.Run run = shell.run("hazards", folder);
    assertThat(run.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains(
            "LOOKS LIKE MAINS: J2 is called a part of the mains",
            "UNKNOWN, TAKE AS HIGH: A, B (fed by a winding of T1 whose voltage nobody told)",
            "Between PLUS and MINUS there are 90 V.",
            "May carry 300 V from HT if a part fails: K by V1, G by V1.",
            "BT1 (lead-acid) stays live with the plug out",
            "kept from T1.3 T1.4, if its pins are as the map says");
    Shell.Run json = shell.run("hazards", folder, "--json");
    assertThat(schema().validate(json.out(), InputFormat.JSON)).isEmpty();
    assertThat(json.out()).contains("\"mayReach\"", "\"looksLikeMains\"", "\"across\"");
  }
}

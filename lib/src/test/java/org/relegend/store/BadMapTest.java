package org.relegend.store;

import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.file.Path;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.Seeds;
import org.relegend.store.StoreException.Kind;

/** Whatever bytes stand in map.json: a map, or one clear sentence. */
class BadMapTest {
  private static final Path PATH = Path.of("folder", "map.json");
  private static final String GOOD = new String(MapFormat.write(FullMap.make()), UTF_8);

  static Stream<Arguments> badFiles() {
    String start = "{\"format\": 1, \"id\": \"m\", \"info\": {\"title\": \"t\"}";
    String ref = "{\"pin\": \"R1.1\"}";
    return Stream.of(
        arguments("empty", "", "the file is empty"),
        arguments("blank", " \n\t ", "the file is empty"),
        arguments("not JSON", "R101,resistor,4k7", "no board map"),
        arguments("a list", "[1, 2]", "no board map"),
        arguments("zero bytes", "\0\0\0\0", "no board map"),
        arguments("truncated", GOOD.substring(0, GOOD.length() / 2), "ends in the middle"),
        arguments("one byte short", GOOD.substring(0, GOOD.length() - 2), "ends in the middle"),
        arguments("more after it", GOOD + "{}", "nothing more may follow"),
        arguments("twice", GOOD + GOOD, "nothing more may follow"),
        arguments("no format", "{\"id\": \"m\"}", "\"format\" is missing"),
        arguments("format 0", "{\"format\": 0}", "no such format"),
        arguments("format 1.5", "{\"format\": 1.5}", "no such format"),
        arguments("format as text", "{\"format\": \"1\"}", "no such format"),
        arguments(
            "no title", "{\"format\": 1, \"id\": \"m\", \"info\": {}}", "\"title\" is missing"),
        arguments("null", start + ", \"parts\": null}", "not null: leave out"),
        arguments("unknown field", start + ", \"colour\": 1}", "\"colour\" is not known"),
        arguments("duplicate field", start + ", \"id\": \"n\"}", "\"id\" stands twice"),
        arguments("text for number", part("\"width_mm\": \"12\""), "a number must stand here"),
        arguments("number for text", part("\"title\": 12"), "a text in quotation marks"),
        arguments("object for list", start + ", \"parts\": {}}", "a list in brackets"),
        arguments("list for object", start + ", \"parts\": [[]]}", "an object in braces"),
        arguments("huge number", part("\"width_mm\": 1e999999999"), "can't be"),
        arguments("endless digits", part("\"width_mm\": " + "9".repeat(5000)), "too long"),
        arguments("NaN", part("\"width_mm\": NaN"), "no JSON"),
        arguments("deep", start + ", \"parts\": " + "[".repeat(100_000), "an object in braces"),
        arguments("deep in front", "{\"a\": " + "[".repeat(100_000), "nested too deeply"),
        arguments("long text", part("\"title\": \"" + "x".repeat(300_000) + "\""), "too long"),
        arguments("long name", part("\"" + "x".repeat(5_000) + "\": 1"), "too long"),
        arguments("long note", part("\"note\": \"" + "x".repeat(30_000) + "\""), "at most 20,000"),
        arguments("quote in a name", part("\"issue\": \"\u202Ex\""), "U+202E"),
        arguments("line break in a name", part("\"title\": \"a\\nb\""), "a line break"),
        arguments(
            "web page in a name",
            part("\"title\": \"<HTML><img src='http://localhost/x'>\""),
            "begins with <HTML>"),
        arguments("web page in a note", part("\"note\": \"<html>\""), "as a web page does"),
        arguments("half a character", part("\"note\": \"\\ud83d\""), "can't hold U+D83D"),
        arguments("raw line break", part("\"title\": \"a\nb\""), "no JSON"),
        arguments(
            "two parts of one id", list("boards", "{\"id\": \"a\"}, {\"id\": \"a\"}"), "twice"),
        arguments("pin without a dot", net("{\"pin\": \"R1\"}"), "PART.PIN"),
        arguments("pin twice", net(ref + ", " + ref), "has pin R1.1 twice"),
        arguments(
            "no such evidence",
            net("{\"pin\": \"R1.1\", \"evidence\": [{\"evidence\": \"heard\"}]}"),
            "one of measured, beeped"),
        arguments(
            "no such day",
            net("{\"pin\": \"R1.1\", \"evidence\": [{\"at\": \"2026-02-30T00:00:00Z\"}]}"),
            "no moment"),
        arguments("trailing comma", start + ",}", "no JSON"),
        arguments("comment", start + "/* */}", "no JSON"),
        arguments("no bracket", start + ", \"parts\": [}", "no JSON"),
        arguments("outside its folder", picture("../x.pdf", "\"page\", \"number\": 1"), "inside"),
        arguments("absolute path", picture("/etc/x.pdf", "\"page\", \"number\": 1"), "relative"),
        arguments("page without number", picture("x.pdf", "\"page\""), "\"number\" is missing"),
        arguments(
            "page with a side",
            picture("x.pdf", "\"page\", \"number\": 1, \"side\": \"solder\""),
            "a page has no field \"side\""),
        arguments("picture of no kind", picture("x.pdf", "\"film\""), "page or photo"));
  }

  private static String part(String field) {
    return list("boards", "{\"id\": \"main\", " + field + "}");
  }

  private static String net(String members) {
    return list("nets", "{\"id\": \"N\", \"name\": \"N\", \"members\": [" + members + "]}");
  }

  private static String picture(String file, String kind) {
    return list(
        "pictures",
        "{\"id\": \"p\", \"file\": \"%s\", \"sha256\": \"%s\", \"width\": 1, \"height\": 1, \"kind\": %s}"
            .formatted(file, "0".repeat(64), kind));
  }

  private static String list(String field, String entries) {
    return "{\"format\": 1, \"id\": \"m\", \"info\": {\"title\": \"t\"},\n\"%s\": [%s]}"
        .formatted(field, entries);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("badFiles")
  void read_ofABadFile_isOneClearError(String name, String text, String words) {
    assertThat(refused(text.getBytes(UTF_8))).contains(words);
  }

  @Test
  void read_tellsLineColumnAndField() {
    String text = GOOD.replace("\"x\": 7,", "\"x\": \"7\",");
    long line = text.substring(0, text.indexOf("\"x\": \"7\"")).lines().count();
    assertThat(refused(text.getBytes(UTF_8)))
        .startsWith(PATH + ": line " + line + ", column 12 (placements/")
        .contains("/x): a number must stand here, not a text. Restore");
  }

  @Test
  void read_tellsWhereAnUnfitThingBegins() {
    String text = GOOD.replace("\"value\": \"4k7\"", "\"value\": \"4\\tk7\"");
    long line = text.substring(0, text.indexOf("\"id\": \"R1\"")).lines().count() - 1;
    assertThat(refused(text.getBytes(UTF_8)))
        .contains("line " + line + ", column 5 (parts/", "a tab");
  }

  @Test
  void read_ofOtherEncodings_isRefused() {
    assertThat(refused(GOOD.getBytes(UTF_16LE))).contains("UTF-8");
    assertThat(refused(GOOD.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1)))
        .contains("no JSON");
  }

  @Test
  void read_withAByteOrderMark_isTaken() throws StoreException {
    assertThat(MapFormat.read(("\uFEFF" + GOOD).getBytes(UTF_8), PATH)).isEqualTo(FullMap.make());
  }

  @Test
  void read_ofFieldsInAnotherOrder_isTaken() throws StoreException {
    String text =
        "{\"info\": {\"note\": \"n\", \"title\": \"t\"}, \"parts\": [], \"id\": \"m\", \"format\": 1}";
    assertThat(MapFormat.read(text.getBytes(UTF_8), PATH).info().note()).isEqualTo("n");
  }

  static LongStream seeds() {
    return Seeds.upTo(20);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void read_of500Mutants_givesAMapOrOneClearError(long seed) {
    Random random = new Random(seed);
    byte[] good = GOOD.getBytes(UTF_8);
    int refused = 0;
    for (int i = 0; i < 500; i++) {
      byte[] mutant = Mutants.of(good, random);
      try {
        MapFormat.read(mutant, PATH);
      } catch (StoreException e) {
        refused++;
        assertClear(e);
      }
    }
    assertThat(refused).isGreaterThan(250);
  }

  private static String refused(byte[] bytes) {
    StoreException e =
        catchThrowableOfType(StoreException.class, () -> MapFormat.read(bytes, PATH));
    assertThat(e).isNotNull();
    assertClear(e);
    return e.getMessage();
  }

  private static void assertClear(StoreException e) {
    assertThat(e.kind()).isIn(Kind.BAD_CONTENT, Kind.NEWER_FORMAT);
    assertThat(e.getMessage())
        .startsWith(PATH + ": ")
        .endsWith(".")
        .hasSizeBetween(40, 700)
        .doesNotContainPattern("\\p{Cntrl}|\\p{Cf}")
        .doesNotContain("Exception", "java.", "fasterxml", "Stream", "Source", "JsonParser");
  }
}

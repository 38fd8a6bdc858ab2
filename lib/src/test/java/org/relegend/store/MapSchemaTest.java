package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.Dialects;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.EditHistory;
import org.relegend.map.RandomEdits;

/** The published schema against files as they are written, by an independent validator. */
class MapSchemaTest {
  private static final Path PATH = Path.of("map.json");
  private static final String FULL = text(FullMap.make());
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(MapFormat.schema(), InputFormat.JSON);

  @Test
  void schema_isItselfOfTheDialectItNames() {
    Schema meta =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of(Dialects.getDraft202012().getId()));
    assertThat(meta.validate(MapFormat.schema(), InputFormat.JSON)).isEmpty();
    assertThat(MapFormat.schema()).contains("\"https://json-schema.org/draft/2020-12/schema\"");
  }

  static Stream<BoardMap> maps() {
    return Stream.concat(
        Stream.of(FullMap.make(), BoardMapSamples.blank()),
        LongStream.rangeClosed(1, 10)
            .mapToObj(
                seed -> {
                  EditHistory history = new EditHistory(BoardMapSamples.random(seed));
                  RandomEdits.applySome(history, seed);
                  return history.current();
                }));
  }

  @ParameterizedTest(name = "map {index}")
  @MethodSource("maps")
  void everyWrittenMap_holdsToTheSchema(BoardMap map) {
    assertThat(SCHEMA.validate(text(map), InputFormat.JSON)).isEmpty();
  }

  /** One change of the full map each, which the reader refuses; the schema must, too. */
  static List<String> changes() {
    return List.of(
        "\"format\": 1 -> \"format\": 3",
        "\"format\": 1 -> \"format\": \"1\"",
        "\"format\": 1,\n ->",
        "\"title\": \"T / '1'\", ->",
        "\"title\": \"T / '1'\" -> \"title\": \"\"",
        "\"title\": \"T / '1'\" -> \"title\": \" x\"",
        "\"title\": \"T / '1'\" -> \"title\": \"a\\tb\"",
        "\"title\": \"T / '1'\" -> \"title\": \"a\u200Fb\"",
        "\"maker\": \"Maker\" -> \"maker\": \"Maker\", \"colour\": \"red\"",
        "\"maker\": \"Maker\" -> \"maker\": null",
        "\"maker\": \"Maker\" -> \"maker\": \"a\\nb\"",
        "\"note\": \"line one\\nline two\" -> \"note\": \"a\\rb\"",
        "\"id\": \"sample\" -> \"id\": \"a/b\"",
        "\"id\": \"supply\" -> \"id\": \"sup ply\"",
        "\"width_mm\": 200.5 -> \"width_mm\": -1",
        "\"width_mm\": 200.5 -> \"width_mm\": 10000",
        "\"width_mm\": 200.5 -> \"width_mm\": \"200\"",
        "\"kind\": \"page\" -> \"kind\": \"film\"",
        "\"kind\": \"page\", ->",
        "\"number\": 1, ->",
        "\"number\": 1, -> \"number\": 0,",
        "\"number\": 1, -> \"number\": 1.5,",
        "\"number\": 1, -> \"number\": 1, \"side\": \"solder\",",
        "\"side\": \"solder\" -> \"side\": \"top\"",
        "\"side\": \"solder\", ->",
        "\"file\": \"photos/component.jpg\" -> \"file\": \"/photos/component.jpg\"",
        "\"file\": \"photos/component.jpg\" -> \"file\": \"photos/../component.jpg\"",
        "\"file\": \"photos/component.jpg\" -> \"file\": \"photos//component.jpg\"",
        "\"file\": \"photos/component.jpg\" -> \"file\": \"C:component.jpg\"",
        "\"file\": \"photos/component.jpg\" -> \"file\": \"photos\\\\component.jpg\"",
        "\"sha256\": \"abab -> \"sha256\": \"ABAB",
        "\"height\": 3000 -> \"height\": 0",
        "\"designator\": \"IC1\", ->",
        "\"designator\": \"IC1\" -> \"designator\": \"IC.1\"",
        "{\"number\": \"2\"} -> {\"number\": \"2 a\"}",
        "{\"number\": \"2\"} -> \"2\"",
        "\"roles\": {\"3\" -> \"roles\": {\"a b\": \"x\", \"3\"",
        "\"pin\": \"U1.+\" -> \"pin\": \"U1\"",
        "\"pin\": \"U1.+\" -> \"pin\": \".1\"",
        "\"nature\": \"dc\" -> \"nature\": \"pulsed\"",
        "\"volts\": 15.5 -> \"volts\": 2000000",
        "\"evidence\": \"measured\" -> \"evidence\": \"heard\"",
        "\"at\": \"2026-03-04T12:00:00Z\" -> \"at\": \"2026-03-04\"",
        "\"at\": \"2026-03-04T12:00:00Z\" -> \"at\": \"2026-13-04T12:00:00Z\"",
        "\"subject\": \"U1/gang 2\" -> \"subject\": \"U1/\"",
        "\"subject\": \"U1/gang 2\" -> \"subject\": \"net:\"",
        "\"subject\": \"U1/gang 2\" -> \"subject\": \"U 1\"",
        "\"ordinal\": 2 -> \"ordinal\": 0",
        "\"y\": 8.5 -> \"y\": \"8.5\"",
        "[30.25, 2] -> [30.25]",
        "[30.25, 2] -> [30.25, 2, 1]",
        "\"aspect\": \"net\" -> \"aspect\": \"value\"",
        "\"aspect\": \"value\" -> \"aspect\": \"net\"",
        "\"aspect\": \"value\" -> \"aspect\": \"size\"",
        "\"kind\": \"stored-charge\" -> \"kind\": \"cold\"",
        "\"b\": \"J2\" -> \"c\": \"J2\"",
        "\"cause\": \"repair\" -> \"cause\": \"whim\"",
        "\"aspect\": \"missing\" -> \"aspect\": \"net\"",
        "\"at\": [\n        \"R2\"\n      ] -> \"at\": []",
        "\"at\": [\n        \"R2\"\n -> \"at\": [\"R3\", \"R1\", \"R2\"",
        "\"matings\": [ -> \"matings\": [[], ",
        "\"found\": \"clicked\" -> \"found\": \"dreamt\"",
        "[1, 2.5, 30, 4] -> [1, 2.5, 30]",
        "[1, 2.5, 30, 4] -> [1, 2.5, 30, 4, 5]",
        "[1, 2.5, 30, 4] -> [1, 2.5, 30, \"4\"]",
        "\"about\": \"parts R1 value\", ->",
        "\"about\": \"parts R1 value\" -> \"about\": \" \"",
        "\"table\": \"parts\", ->",
        "\"table\": \"info\" -> \"table\": \"info\", \"rank\": 1",
        "\"mine\": \"\\\"a\\\\nb\\\"\" -> \"base\": \"1\"");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("changes")
  void whatTheReaderRefuses_theSchemaRefuses(String change) throws Exception {
    String[] sides = change.split(" ?->", 2);
    String changed = FULL.replace(sides[0], sides[1].strip());
    assertThat(changed).as("the change took place").isNotEqualTo(FULL);
    new ObjectMapper().readTree(changed); // still JSON, so the schema has its say
    assertThatThrownBy(() -> MapFormat.read(changed.getBytes(StandardCharsets.UTF_8), PATH))
        .isInstanceOf(StoreException.class);
    assertThat(SCHEMA.validate(changed, InputFormat.JSON)).isNotEmpty();
  }

  /** Every field the format has is in the schema, and the other way round. */
  @Test
  void schema_namesTheFieldsThatTheFullMapHas() throws Exception {
    JsonNode schema = new ObjectMapper().readTree(MapFormat.schema());
    JsonNode full = new ObjectMapper().readTree(FULL);
    assertThat(full.properties()).hasSameSizeAs(schema.get("properties").properties());
    JsonNode photo = full.get("pictures").get(2);
    assertThat(photo.properties())
        .hasSize(schema.at("/$defs/photo/properties").properties().size() - 1); // has no title
    JsonNode net = full.get("nets").get(0);
    assertThat(net.properties()).hasSameSizeAs(schema.at("/$defs/net/properties").properties());
  }

  private static String text(BoardMap map) {
    return new String(MapFormat.write(map), StandardCharsets.UTF_8);
  }
}

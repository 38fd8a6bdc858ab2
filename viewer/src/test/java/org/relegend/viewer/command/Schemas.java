package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Holds what {@code --json} prints against the schema in the jar, with an independent validator.
 */
final class Schemas {
  private static final Map<String, Schema> READ = new ConcurrentHashMap<>();

  private Schemas() {}

  /** The one document that was printed, after it was found to be as the command's schema says. */
  static JsonNode valid(String command, String printed) {
    Schema schema = READ.computeIfAbsent(command, Schemas::read);
    assertThat(schema.validate(printed, InputFormat.JSON)).as(command + " --json").isEmpty();
    try {
      return new ObjectMapper().readTree(printed);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Schema read(String command) {
    try (InputStream in = Commands.class.getResourceAsStream(command + ".schema.json")) {
      assertThat(in).as("schema of " + command).isNotNull();
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

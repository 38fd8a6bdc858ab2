package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sources: XDG Base Directory Specification 0.8 for Linux; from memory: the known folder
 * LocalAppData of Windows and Library/Caches of macOS.
 */
class CacheFolderTest {
  private static final Path HOME = Path.of("/home/kim").toAbsolutePath();
  private static final String GIVEN = Path.of("/given").toAbsolutePath().toString();

  private static Path of(String system, Map<String, String> environment) {
    return CacheFolder.of(system, HOME, environment::get);
  }

  @Test
  void linux_followsTheVariable_elseDotCache() {
    assertThat(of("Linux", Map.of("XDG_CACHE_HOME", GIVEN))).isEqualTo(Path.of(GIVEN, "relegend"));
    assertThat(of("Linux", Map.of("LOCALAPPDATA", GIVEN)))
        .isEqualTo(HOME.resolve(".cache/relegend"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "caches", "./caches", "\0"})
  void whatIsNoAbsolutePath_isIgnored(String given) {
    assertThat(of("Linux", Map.of("XDG_CACHE_HOME", given)))
        .isEqualTo(HOME.resolve(".cache/relegend"));
    assertThat(of("Windows 11", Map.of("LOCALAPPDATA", given)))
        .isEqualTo(HOME.resolve("AppData/Local/Relegend"));
  }

  @Test
  void windows_hasItUnderLocalAppData() {
    assertThat(of("Windows 10", Map.of("LOCALAPPDATA", GIVEN, "XDG_CACHE_HOME", "/no")))
        .isEqualTo(Path.of(GIVEN, "Relegend"));
    assertThat(of("Windows 10", Map.of())).isEqualTo(HOME.resolve("AppData/Local/Relegend"));
  }

  @Test
  void mac_hasItInTheLibrary() {
    assertThat(of("Mac OS X", Map.of("XDG_CACHE_HOME", GIVEN)))
        .isEqualTo(HOME.resolve("Library/Caches/Relegend"));
  }

  @Test
  void ofUser_isOneOfThose() {
    assertThat(CacheFolder.ofUser().getFileName().toString()).isEqualToIgnoringCase("relegend");
  }
}

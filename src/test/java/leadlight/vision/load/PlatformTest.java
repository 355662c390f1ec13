package leadlight.vision.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Map;
import leadlight.model.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlatformTest {

  @ParameterizedTest
  @CsvSource({
    "Linux, amd64",
    "Linux, aarch64",
    "Linux, arm",
    "Mac OS X, x86_64",
    "Mac OS X, aarch64",
    "Windows 11, amd64",
    "Windows 10, x86"
  })
  void the_jar_holds_a_library_for(String osName, String osArch) {
    assertThat(NativeLibrary.find(Platform.of(osName, osArch))).isNotNull();
  }

  @Test
  void a_platform_without_library_is_refused_in_one_line() {
    assertThatThrownBy(() -> NativeLibrary.find(Platform.of("Linux", "riscv64")))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("linux on riscv64")
        .hasMessageNotContaining("\n");
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void the_cache_folder_follows_the_custom_of_the_platform() {
    Platform linux = Platform.of("Linux", "amd64");
    assertThat(linux.cacheFolder(Map.of(), "/home/ann"))
        .contains(Path.of("/home/ann/.cache/leadlight"));
    assertThat(linux.cacheFolder(Map.of("XDG_CACHE_HOME", "/fast"), "/home/ann"))
        .contains(Path.of("/fast/leadlight"));
    assertThat(Platform.of("Mac OS X", "aarch64").cacheFolder(Map.of(), "/Users/ann"))
        .contains(Path.of("/Users/ann/Library/Caches/leadlight"));
    assertThat(
            Platform.of("Windows 11", "amd64")
                .cacheFolder(Map.of("LOCALAPPDATA", "/c/Local"), "/c/ann"))
        .contains(Path.of("/c/Local/leadlight"));
  }

  @Test
  void a_relative_cache_folder_is_ignored_and_an_account_without_home_has_none() {
    Platform linux = Platform.of("Linux", "amd64");
    assertThat(linux.cacheFolder(Map.of("XDG_CACHE_HOME", "here"), "?")).isEmpty();
  }
}

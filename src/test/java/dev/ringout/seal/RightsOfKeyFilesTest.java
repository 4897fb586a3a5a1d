package dev.ringout.seal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A key that others can read is theirs too. */
class RightsOfKeyFilesTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "rw-------,false",
    "r--------,false",
    "rwx--x--x,false",
    "rw--w--w-,false",
    "rw-r-----,true",
    "rw----r--,true",
    "rw-r--r--,true"
  })
  void a_key_is_open_to_others_where_its_group_or_anybody_may_read_it(String rights, boolean open)
      throws Exception {
    Path key = Files.createFile(folder.resolve("key"));
    Files.setPosixFilePermissions(key, PosixFilePermissions.fromString(rights));
    assertEquals(open, Keys.isOpenToOthers(key));
  }

  @ParameterizedTest
  @CsvSource("no-such-key")
  void of_a_key_that_is_not_there_nothing_is_said(String name) {
    assertFalse(Keys.isOpenToOthers(folder.resolve(name)));
  }
}

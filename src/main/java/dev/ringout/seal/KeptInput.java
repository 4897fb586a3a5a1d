package dev.ringout.seal;

import java.util.Optional;

/** Something that a record was made from and that is kept in a store, not in a file of its own. */
public sealed interface KeptInput {

  /** What is made of it, by its kind. */
  <T> T match(Cases<T> cases);

  /** The test, where it is one. */
  default Optional<Test> asTest() {
    return Optional.empty();
  }

  /**
   * A file of a list.
   *
   * @param list what the store calls the list
   * @param listSha256 the digest by which the store knows the list: of the file, or of the folder
   * @param file its name
   * @param sha256 of its bytes
   */
  record ListFile(String list, String listSha256, String file, String sha256) implements KeptInput {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.listFile(this);
    }
  }

  /**
   * A test of a unit, as far as it had come. Its last hash is over all that was in it: the test as
   * a whole, and each entry.
   *
   * @param serialNumber of the unit, as the store spells it
   * @param listSha256 the digest of the list that the unit is made to
   * @param number the how-manieth of the unit
   * @param sheet its name
   * @param entries how many there were
   * @param lastHash the hash of the last of them
   */
  record Test(
      String serialNumber,
      String listSha256,
      int number,
      String sheet,
      int entries,
      String lastHash)
      implements KeptInput {
    /** A test in which nothing happened is none. */
    public Test {
      if (number < 1 || entries < 1) {
        throw new IllegalArgumentException("no test has " + number + " or " + entries);
      }
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.test(this);
    }

    @Override
    public Optional<Test> asTest() {
      return Optional.of(this);
    }

    /** Whether this is the same test, and as far as the other at least. */
    public boolean holds(Test other) {
      return listSha256.equals(other.listSha256)
          && number == other.number
          && (entries == other.entries ? lastHash.equals(other.lastHash) : entries > other.entries);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link ListFile}. */
    T listFile(ListFile input);

    /** See {@link Test}. */
    T test(Test input);
  }
}

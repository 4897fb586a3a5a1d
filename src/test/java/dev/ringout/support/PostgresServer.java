package dev.ringout.support;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.compressors.xz.XZCompressorInputStream;

/**
 * A server of its own for the tests: that of the machine, else one that is unpacked from a library.
 * So no test is ever left out.
 */
public final class PostgresServer {
  /** The server does not run as root; these are on every system. */
  private static final String NOBODY = "nobody";

  private static final String PASSWORD = "a pass:word/with @signs";
  private static final AtomicInteger DATABASES = new AtomicInteger();

  private final Path folder;
  private final Path programs;
  private final int port;

  private PostgresServer(Path folder, Path programs, int port) {
    this.folder = folder;
    this.programs = programs;
    this.port = port;
  }

  /** One for all tests of a run; it ends with them. */
  public static PostgresServer running() {
    return Running.SERVER;
  }

  private static final class Running {
    static final PostgresServer SERVER = start();
  }

  private static PostgresServer start() {
    try {
      Path folder = Files.createTempDirectory("ringout-postgres");
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
      Path programs = programs(folder);
      int port;
      try (ServerSocket free = new ServerSocket(0)) {
        port = free.getLocalPort();
      }
      PostgresServer server = new PostgresServer(folder, programs, port);
      server.make();
      server.startAgain();
      Runtime.getRuntime().addShutdownHook(new Thread(server::end));
      return server;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path programs(Path folder) throws IOException {
    Optional<Path> installed = Optional.empty();
    Path packages = Path.of("/usr/lib/postgresql");
    if (Files.isDirectory(packages) && !Boolean.getBoolean("ringout.packagedPostgres")) {
      try (Stream<Path> versions = Files.list(packages)) {
        installed =
            versions
                .map(version -> version.resolve("bin"))
                .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                .max(Path::compareTo);
      }
    }
    return installed.isPresent() ? installed.get() : unpacked(folder.resolve("programs"));
  }

  private static Path unpacked(Path to) throws IOException {
    try (InputStream packed =
            PostgresServer.class.getResourceAsStream("/postgres-linux-x86_64.txz");
        TarArchiveInputStream tar =
            new TarArchiveInputStream(
                new XZCompressorInputStream(new BufferedInputStream(packed)))) {
      for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
        Path file = to.resolve(entry.getName()).normalize();
        if (entry.isDirectory()) {
          Files.createDirectories(file);
        } else if (entry.isSymbolicLink()) {
          Files.createDirectories(file.getParent());
          Files.createSymbolicLink(file, Path.of(entry.getLinkName()));
        } else {
          Files.createDirectories(file.getParent());
          Files.copy(tar, file);
          boolean runs = (entry.getMode() & 0100) != 0;
          Files.setPosixFilePermissions(
              file, PosixFilePermissions.fromString(runs ? "rwxr-xr-x" : "rw-r--r--"));
        }
      }
    }
    return to.resolve("bin");
  }

  private void make() throws IOException {
    Path password = Files.writeString(folder.resolve("password"), PASSWORD);
    Path data = Files.createDirectory(folder.resolve("data"));
    Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("rwx------"));
    if (isRoot()) {
      run(List.of("chown", NOBODY, data.toString()));
    }
    run(
        asUser(
            programs.resolve("initdb").toString(),
            "-D",
            data.toString(),
            "-U",
            "owner",
            "-A",
            "scram-sha-256",
            "-E",
            "UTF8",
            "--no-locale",
            "--pwfile=" + password));
  }

  /** Starts it, also after it was ended. */
  public void startAgain() {
    run(
        asUser(
            programs.resolve("pg_ctl").toString(),
            "-D",
            folder.resolve("data").toString(),
            "-l",
            folder.resolve("data").resolve("log").toString(),
            "-o",
            "-p " + port + " -c listen_addresses=127.0.0.1 -c unix_socket_directories=''",
            "-w",
            "start"));
  }

  /** Ends it at once, as a power cut would: nothing is written any more. */
  public void kill() {
    run(
        asUser(
            programs.resolve("pg_ctl").toString(),
            "-D",
            folder.resolve("data").toString(),
            "-m",
            "immediate",
            "stop"));
  }

  private void end() {
    kill();
    try {
      run(List.of("rm", "-rf", folder.toString()));
    } catch (IllegalStateException e) {
      // It lies in the temporary folder.
    }
  }

  private static boolean isRoot() {
    return "root".equals(System.getProperty("user.name"));
  }

  private static List<String> asUser(String... command) {
    List<String> all = new ArrayList<>();
    if (isRoot()) {
      all.addAll(List.of("setpriv", "--reuid=" + NOBODY, "--clear-groups"));
    }
    all.addAll(List.of(command));
    return all;
  }

  private static void run(List<String> command) {
    try {
      Path said = Files.createTempFile("ringout", ".txt");
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(said.toFile())
              .directory(Path.of("/").toFile())
              .start();
      if (!process.waitFor(2, TimeUnit.MINUTES) || process.exitValue() != 0) {
        throw new IllegalStateException(command + ": " + Files.readString(said));
      }
      Files.delete(said);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** The address of a database, for its owner. */
  public String address(String database) {
    return "postgresql://owner@127.0.0.1:" + port + "/" + database;
  }

  /** The address of a database for another role. */
  public String address(String database, String role) {
    return "postgresql://" + role + "@127.0.0.1:" + port + "/" + database;
  }

  /** The password of the owner, and of every role that a test makes. */
  public String password() {
    return PASSWORD;
  }

  /** A new database in which there is nothing. */
  public String database() {
    String name = "shop" + DATABASES.incrementAndGet();
    sql("postgres", "create database " + name);
    return name;
  }

  /** Runs statements as the owner. */
  public void sql(String database, String... statements) {
    java.util.Properties who = new java.util.Properties();
    who.setProperty("user", "owner");
    who.setProperty("password", PASSWORD);
    try (var connection =
            java.sql.DriverManager.getConnection(
                "jdbc:postgresql://127.0.0.1:" + port + "/" + database, who);
        var statement = connection.createStatement()) {
      for (String one : statements) {
        statement.execute(one);
      }
    } catch (java.sql.SQLException e) {
      throw new IllegalStateException(e);
    }
  }
}

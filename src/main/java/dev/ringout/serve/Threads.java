package dev.ringout.serve;

/** Threads of this room: none keeps the program from ending. */
final class Threads {
  private Threads() {}

  static Thread named(String name, Runnable work) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    return thread;
  }

  static Thread start(String name, Runnable work) {
    Thread thread = named(name, work);
    thread.start();
    return thread;
  }
}

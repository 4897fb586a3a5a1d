package dev.ringout.page;

/** Whether bytes are the picture that they are said to be: by what each kind begins with. */
final class Pictures {
  private Pictures() {}

  static boolean isOne(String type, byte[] bytes) {
    return switch (type) {
      case "image/jpeg" -> begins(bytes, 0xff, 0xd8, 0xff);
      case "image/png" -> begins(bytes, 0x89, 'P', 'N', 'G');
      default -> false;
    };
  }

  private static boolean begins(byte[] bytes, int... with) {
    if (bytes.length < with.length) {
      return false;
    }
    for (int i = 0; i < with.length; i++) {
      if ((bytes[i] & 0xff) != with[i]) {
        return false;
      }
    }
    return true;
  }
}

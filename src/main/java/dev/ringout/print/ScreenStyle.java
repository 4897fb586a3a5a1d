package dev.ringout.print;

/**
 * How pages look on a screen, all alike: light or dark, wide or narrow, with the keyboard alone.
 */
final class ScreenStyle {
  /** For the head of a page: without it a phone draws the page as wide as a desk's. */
  static final String VIEWPORT =
      "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n";

  /**
   * Drawings are black on white by themselves: in the dark they are turned over. On a phone they
   * stay large enough to be read, and scroll by themselves.
   */
  static final String COMMON =
      """
      @media screen {
        :root { color-scheme: light dark; --ink: #111; --paper: #fff; --line: #767676; --bad: #a40000; --good: #005c2e; }
        @media (prefers-color-scheme: dark) {
          :root { --ink: #eee; --paper: #161616; --line: #9a9a9a; --bad: #ff9c9c; --good: #8fe0b0; }
          svg { filter: invert(0.92); }
        }
        body { color: var(--ink); background: var(--paper); max-width: 1100px; margin: 0 auto; padding: 12px 16px; font-size: 16px; }
        h1 { font-size: 24px; } h2 { font-size: 22px; } h3 { font-size: 19px; }
        h1, h2, h3, p, figcaption, code { overflow-wrap: anywhere; }
        nav { display: block; border-bottom: 1px solid var(--line); padding-bottom: 8px; }
        nav ul { display: flex; flex-wrap: wrap; gap: 4px 14px; margin: 0; padding: 0; list-style: none; }
        nav a { color: inherit; display: inline-block; padding: 4px 0; }
        a:focus-visible, input:focus-visible, button:focus-visible, div.scroll:focus-visible { outline: 3px solid currentColor; outline-offset: 2px; }
        p.warns { border-left-color: var(--bad); }
        th { border-bottom-color: var(--ink); } td { border-bottom-color: var(--line); }
        div.scroll, div.drawings, figure { overflow-x: auto; }
        svg { background: #fff; max-width: max(100%, 180mm); height: auto; }
      }
      """;

  private ScreenStyle() {}
}

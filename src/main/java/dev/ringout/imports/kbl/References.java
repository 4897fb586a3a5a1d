package dev.ringout.imports.kbl;

import dev.ringout.imports.list.KblOddity;
import dev.ringout.imports.list.SkipReason;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Follows references from element to element. */
final class References {
  private final KblXml.Content content;
  private final Map<String, Element> again = new HashMap<>();

  References(KblXml.Content content) {
    this.content = content;
    content.idsUsedAgain().forEach(one -> again.putIfAbsent(one.id(), one));
  }

  /** The one element that a child refers to. */
  Element one(Element from, String role, String... kinds) throws NotRead {
    return follow(from, role, id(from, role), kinds);
  }

  /** All elements that a child refers to. */
  List<Element> all(Element from, String role, String... kinds) throws NotRead {
    List<Element> all = new ArrayList<>();
    for (String id : from.references(role)) {
      all.add(follow(from, role, id, kinds));
    }
    return all;
  }

  /** The one id that a child holds. */
  private static String id(Element from, String role) throws NotRead {
    List<String> ids = from.references(role);
    if (ids.isEmpty()) {
      throw leadsNowhere(from, new KblOddity.ReferenceEmpty(from.name(), from.id(), role));
    }
    return ids.get(0);
  }

  /** The element of an id, which must be of one of these kinds. */
  Element follow(Element from, String role, String id, String... kinds) throws NotRead {
    Element found = content.byId().get(id);
    String name = found == null ? content.otherIds().getOrDefault(id, "") : found.name();
    Element other = again.get(id);
    if (other != null && found != null) {
      throw leadsNowhere(other, new KblOddity.IdUsedAgain(other.name(), id, found.line()));
    }
    if (name.isEmpty()) {
      throw leadsNowhere(from, new KblOddity.ReferenceNotThere(from.name(), from.id(), role, id));
    }
    if (found == null || !List.of(kinds).contains(name)) {
      throw leadsNowhere(
          from, new KblOddity.ReferenceToOtherKind(from.name(), from.id(), role, id, name));
    }
    return found;
  }

  /** Whether any element has this id. */
  boolean isThere(String id) {
    return content.byId().containsKey(id) || content.otherIds().containsKey(id);
  }

  private static NotRead leadsNowhere(Element at, KblOddity why) {
    return new NotRead(SkipReason.REFERENCE_LEADS_NOWHERE, at.line(), why);
  }
}

package org.keelweigh.ui.boat;

import java.util.List;
import java.util.Optional;

/**
 * A kind of gear that may come with a boat, by the code under which the price book or a listing's text knows it.
 *
 * @param code the code
 * @param words what people call it
 */
record GearKind(String code, String words) {

    private static final List<GearKind> ALL = List.of(
            new GearKind("paddle", "paddles or oars"),
            new GearKind("vest", "life jackets"),
            new GearKind("seat", "seats"),
            new GearKind("cart", "launch cart"),
            new GearKind("signal-light", "whistle and white light"),
            new GearKind("pump", "pump"),
            new GearKind("skirt-or-bags", "spray deck or air bags"),
            new GearKind("rudder", "rudder"),
            new GearKind("battery", "battery"),
            new GearKind("charger", "charger"),
            new GearKind("anchor-fishing", "anchor and rod holders"),
            new GearKind("dry-bag-lock", "dry bag and cable lock"),
            new GearKind("rack-bars", "roof bars"),
            new GearKind("cradle-straps", "cradle and straps"),
            new GearKind("trailer", "trailer"),
            new GearKind("cover", "cover"));

    static List<GearKind> all() {
        return ALL;
    }

    static Optional<GearKind> of(String code) {
        return ALL.stream().filter(each -> each.code.equals(code)).findFirst();
    }
}

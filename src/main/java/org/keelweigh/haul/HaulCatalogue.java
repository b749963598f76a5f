package org.keelweigh.haul;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.catalogue.Row;
import org.keelweigh.catalogue.Table;

/**
 * The kinds of cart and the surfaces.
 *
 * @param carts the kinds of cart, in the table's order
 * @param surfaces the surfaces, in the table's order
 */
public record HaulCatalogue(List<CartType> carts, List<Surface> surfaces) {

    public HaulCatalogue {
        carts = List.copyOf(carts);
        surfaces = List.copyOf(surfaces);
    }

    /**
     * Reads {@code carts.csv} and {@code surfaces.csv}.
     *
     * @throws org.keelweigh.catalogue.CatalogueException if a line is unusable, a code stands twice, or a cart avoids a
     *     surface that does not exist
     */
    public static HaulCatalogue read(Catalogue catalogue) {
        List<Surface> surfaces =
                catalogue.table("surfaces.csv").unique("surface").map(Surface::of);
        Map<String, Surface> known = new TreeMap<>();
        surfaces.forEach(each -> known.put(each.code(), each));
        Table carts = catalogue.table("carts.csv").unique("cart");
        carts.rows().forEach(row -> checkAvoided(row, known));
        return new HaulCatalogue(carts.map(CartType::of), surfaces);
    }

    private static void checkAvoided(Row row, Map<String, Surface> known) {
        for (String code : row.words("avoid")) {
            if (!known.containsKey(code)) {
                throw row.complaint("the cart avoids \"" + code + "\", which is no surface of surfaces.csv");
            }
        }
    }

    /**
     * Finds a kind of cart.
     *
     * @throws IllegalArgumentException naming the code and those that exist
     */
    public CartType cart(String code) {
        return carts.stream()
                .filter(each -> each.code().equals(code))
                .findFirst()
                .orElseThrow(() -> {
                    String known = carts.stream().map(CartType::code).collect(Collectors.joining(", "));
                    return new IllegalArgumentException("The cart \"" + code + "\" is not one of " + known);
                });
    }

    /**
     * Finds a surface.
     *
     * @throws IllegalArgumentException naming the code and those that exist
     */
    public Surface surface(String code) {
        return surfaces.stream()
                .filter(each -> each.code().equals(code))
                .findFirst()
                .orElseThrow(() -> {
                    String known = surfaces.stream().map(Surface::code).collect(Collectors.joining(", "));
                    return new IllegalArgumentException("The surface \"" + code + "\" is not one of " + known);
                });
    }
}

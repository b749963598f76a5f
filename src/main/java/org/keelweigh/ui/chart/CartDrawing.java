package org.keelweigh.ui.chart;

/** Each boat on its cart, seen from the side and to scale, with the forces on it. */
public class CartDrawing extends BoatChart<CartDrawingData> {

    public CartDrawing(String title) {
        super("kw-cart-drawing", title);
    }
}

package org.keelweigh.ui.chart;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasStyle;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.dom.Element;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A figure on the page: a heading that says what it shows, the drawing, and the same numbers as a table.
 *
 * <p>The drawing is a web component; it takes the data record as its {@code data} property and redraws itself on each
 * change.
 *
 * @param <D> what this chart draws
 */
@Tag("figure")
@JsModule("context://charts/keelweigh-charts.js")
@StyleSheet("context://css/charts.css")
public abstract class Chart<D extends ChartData> extends Component implements HasStyle {

    private static final String TABLE_TITLE = "Numbers as a table";

    private final H3 heading;
    private final Element drawing;
    private final NumbersTableView numbers = new NumbersTableView();
    private @Nullable D data;

    /** Creates the figure around a drawing of the given element name. */
    protected Chart(String elementName, String title) {
        heading = new H3(title);
        drawing = new Element(elementName);
        addClassName("kw-chart");
        getElement()
                .appendChild(
                        new Element("figcaption").appendChild(heading.getElement()),
                        drawing,
                        new NativeDetails(TABLE_TITLE, scrollable(numbers, title)).getElement());
    }

    /** A table wider than a small screen scrolls by itself, also by keyboard. */
    private static Div scrollable(NumbersTableView numbers, String title) {
        Div frame = new Div(numbers);
        frame.addClassName("kw-numbers");
        frame.getElement()
                .setAttribute("tabindex", "0")
                .setAttribute("role", "region")
                .setAttribute("aria-label", title + ": numbers");
        return frame;
    }

    /** Draws the data and fills the table; the same data again changes nothing. */
    public void setData(D data) {
        if (!data.equals(this.data)) {
            this.data = data;
            drawing.setPropertyBean("data", data);
            numbers.show(data.table());
        }
    }

    public Optional<D> getData() {
        return Optional.ofNullable(data);
    }

    public void setTitle(String title) {
        heading.setText(title);
    }

    public String getTitle() {
        return heading.getText();
    }
}

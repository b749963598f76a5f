package org.keelweigh.ui.chart;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A numbers table on the page. Where only figures changed it changes the words in the cells and leaves the rest. */
class NumbersTableView extends NativeTable {

    private @Nullable NumbersTable shown;

    void show(NumbersTable table) {
        if (shown == null || !sameShape(shown, table)) {
            build(table);
        } else {
            setCaptionText(table.caption());
            refill(table);
        }
        shown = table;
    }

    private static boolean sameShape(NumbersTable one, NumbersTable other) {
        return one.columns().size() == other.columns().size()
                && one.rows().size() == other.rows().size();
    }

    private void build(NumbersTable table) {
        removeHead();
        removeBody();
        setCaptionText(table.caption());
        getHead().add(row(table.columns(), "col", table.columns().size()));
        table.rows().forEach(cells -> getBody().add(row(cells, "row", 1)));
    }

    private static NativeTableRow row(List<String> cells, String scope, int headings) {
        NativeTableRow row = new NativeTableRow();
        for (int at = 0; at < cells.size(); at++) {
            row.add(at < headings ? heading(cells.get(at), scope) : new NativeTableCell(cells.get(at)));
        }
        return row;
    }

    private static NativeTableHeaderCell heading(String text, String scope) {
        NativeTableHeaderCell cell = new NativeTableHeaderCell(text);
        cell.getElement().setAttribute("scope", scope);
        return cell;
    }

    private void refill(NumbersTable table) {
        refill(getHead().getChildren().toList().getFirst(), table.columns());
        List<Component> rows = getBody().getChildren().toList();
        for (int at = 0; at < rows.size(); at++) {
            refill(rows.get(at), table.rows().get(at));
        }
    }

    private static void refill(Component row, List<String> cells) {
        List<Component> places = row.getChildren().toList();
        for (int at = 0; at < places.size(); at++) {
            String text = cells.get(at);
            if (!text.equals(places.get(at).getElement().getText())) {
                places.get(at).getElement().setText(text);
            }
        }
    }
}

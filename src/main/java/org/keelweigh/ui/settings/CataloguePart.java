package org.keelweigh.ui.settings;

import com.vaadin.flow.component.html.Code;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableBody;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import org.keelweigh.appraisal.CatalogueOrigin;
import org.keelweigh.appraisal.CatalogueSource;

/** Tells which catalogues are in use and where their figures come from. */
final class CataloguePart extends Section {

    CataloguePart(CatalogueOrigin origin) {
        addClassName("kw-sheet");
        Paragraph folder = new Paragraph();
        folder.setTestId("catalogue-folder");
        origin.shopFolder()
                .ifPresentOrElse(
                        name -> folder.add(
                                new Span("Tables in this folder replace the shipped ones: "), new Code(name)),
                        () -> folder.setText(
                                "The catalogues that come with the program are in use: checks, prices, carts, criteria and the rest."));
        Paragraph estimates = new Paragraph(
                "An estimate is a figure from common practice without a published source. Correct any of them by a "
                        + "table of the same name in a folder of your own, named by KEELWEIGH_CATALOGUE_FOLDER.");
        add(new H2("Catalogues"), folder, estimates, new NativeDetails("Where the figures come from", table(origin)));
    }

    private static Div table(CatalogueOrigin origin) {
        NativeTable table = new NativeTable();
        table.setCaptionText("Each table names a source line by line");
        table.getHead().add(new NativeTableRow(head("Table"), head("Lines"), head("Estimates"), head("Other sources")));
        NativeTableBody body = table.addBody();
        origin.tables().forEach(each -> body.add(row(each)));
        Div scroll = new Div(table);
        scroll.addClassName("kw-table-scroll");
        scroll.getElement()
                .setAttribute("tabindex", "0")
                .setAttribute("role", "region")
                .setAttribute("aria-label", "Sources of the catalogues");
        return scroll;
    }

    private static NativeTableRow row(CatalogueSource source) {
        NativeTableHeaderCell file = new NativeTableHeaderCell(source.file());
        file.getElement().setAttribute("scope", "row");
        return new NativeTableRow(
                file,
                number(source.lines()),
                number(source.estimates()),
                new NativeTableCell(String.join("; ", source.sources())));
    }

    private static NativeTableHeaderCell head(String text) {
        NativeTableHeaderCell cell = new NativeTableHeaderCell(text);
        cell.getElement().setAttribute("scope", "col");
        return cell;
    }

    private static NativeTableCell number(int value) {
        NativeTableCell cell = new NativeTableCell(String.valueOf(value));
        cell.addClassName("kw-number");
        return cell;
    }
}

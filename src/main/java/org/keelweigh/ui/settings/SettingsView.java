package org.keelweigh.ui.settings;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.time.Clock;
import org.keelweigh.appraisal.CatalogueOrigin;
import org.keelweigh.shortlist.DatabaseBackup;
import org.keelweigh.ui.shell.VisitorField;
import org.springframework.beans.factory.annotation.Value;

/** The visitor's name and colours, the backup, and where data and catalogues come from. */
@Route("settings")
@PageTitle("Settings · Keelweigh")
@StyleSheet("css/settings.css")
public class SettingsView extends Section {

    SettingsView(
            DatabaseBackup backup,
            CatalogueOrigin catalogues,
            Clock clock,
            @Value("${keelweigh.data-folder}") String dataFolder,
            @Value("${spring.application.version:development}") String version) {
        addClassNames("kw-page", "kw-settings");
        add(new H1("Settings"));
        add(sheet("You", new VisitorField()));
        add(sheet("Colours", new ColourField()));
        add(new BackupPart(backup, dataFolder, clock));
        add(new CataloguePart(catalogues));
        Paragraph program = new Paragraph("Keelweigh, version " + version + ".");
        program.setTestId("version");
        add(sheet("Program", program));
    }

    private static Section sheet(String heading, Component part) {
        Section sheet = new Section(new H2(heading), part);
        sheet.addClassName("kw-sheet");
        return sheet;
    }
}

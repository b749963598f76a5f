package org.keelweigh.ui.settings;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Code;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.server.streams.DownloadEvent;
import com.vaadin.flow.server.streams.DownloadHandler;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.keelweigh.shortlist.DatabaseBackup;

/** Tells where the data are and copies them in one click. */
final class BackupPart extends Section {

    private final transient DatabaseBackup backup;
    private final transient Clock clock;

    BackupPart(DatabaseBackup backup, String dataFolder, Clock clock) {
        this.backup = backup;
        this.clock = clock;
        addClassName("kw-sheet");
        Optional<String> instead = backup.instead();
        add(new H2("Your data"));
        if (instead.isPresent()) {
            Paragraph other = new Paragraph(instead.get());
            other.setTestId("backup-instead");
            add(other);
        } else {
            showFolder(dataFolder);
            showRestore();
        }
    }

    private void showFolder(String dataFolder) {
        Code folder = new Code(Path.of(dataFolder).toAbsolutePath().normalize().toString());
        Paragraph where = new Paragraph(new Span("Everything is kept in this folder of your computer: "), folder);
        where.setTestId("data-folder");
        DownloadHandler download = this::download;
        Anchor link = new Anchor(download, "Back up now");
        link.addClassName("kw-settings-action");
        link.setTestId("backup");
        add(where, new Div(link));
    }

    private void download(DownloadEvent event) throws IOException {
        event.setFileName(backup.fileName(LocalDate.now(clock).toString()));
        event.setContentType("application/zip");
        backup.writeTo(event.getOutputStream());
    }

    private void showRestore() {
        add(
                new H3("To go back to a backup"),
                new OrderedList(
                        new ListItem("Stop Keelweigh."),
                        new ListItem("Move the file keelweigh.mv.db out of the folder above, to somewhere safe."),
                        new ListItem("Unpack the backup into the folder, so that keelweigh.mv.db is there again."),
                        new ListItem("Start Keelweigh.")));
    }
}

package org.keelweigh.ui.shell;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import java.io.ByteArrayInputStream;
import java.util.Locale;
import java.util.function.Supplier;

/** Links to files that are made when somebody asks for them. */
public final class Downloads {

    private Downloads() {}

    /** Makes a link. */
    public static Anchor link(String text, String fileName, String mediaType, Supplier<byte[]> content) {
        DownloadHandler handler = DownloadHandler.fromInputStream(event -> {
            byte[] bytes = content.get();
            return new DownloadResponse(new ByteArrayInputStream(bytes), fileName, mediaType, bytes.length);
        });
        Anchor link = new Anchor(handler, text);
        link.addClassName("kw-download");
        return link;
    }

    /** Makes a file name of a boat's name that every system accepts. */
    public static String fileName(String what, String boat, String ending) {
        String plain =
                boat.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String brief = plain.length() > 40 ? plain.substring(0, 40) : plain;
        return what + (brief.isEmpty() ? "" : "-" + brief) + "." + ending;
    }
}

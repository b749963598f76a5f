package org.keelweigh.ui.photo;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.List;
import java.util.function.Function;
import org.keelweigh.shortlist.Photo;
import org.keelweigh.shortlist.PhotoAlbum;
import org.keelweigh.ui.shell.Undo;
import org.keelweigh.ui.shell.Visitor;

/** Photos in a row: small, each opening in full, with a caption to write and a deletion that can be undone. */
public final class PhotoStrip extends UnorderedList {

    private final transient PhotoAlbum album;
    private final transient Function<Photo, String> subject;
    private transient List<Photo> shown = List.of();

    /**
     * Makes an empty row.
     *
     * @param album where the photos are
     * @param subject tells in words what a photo without caption shows
     */
    public PhotoStrip(PhotoAlbum album, Function<Photo, String> subject) {
        this.album = album;
        this.subject = subject;
        addClassName("kw-photos");
        getElement().setAttribute("aria-label", "Photos");
    }

    /** Shows these photos; where they are shown already all stays as it is, and so does a caption somebody is writing. */
    public void show(List<Photo> photos) {
        if (!photos.equals(shown)) {
            shown = List.copyOf(photos);
            removeAll();
            photos.forEach(photo -> add(item(photo)));
        }
        setVisible(!photos.isEmpty());
    }

    private ListItem item(Photo photo) {
        String words = photo.caption() == null ? subject.apply(photo) : photo.caption();
        Image small = new Image(PhotoFiles.smallAddress(photo.id()), "Photo: " + words);
        small.getElement().setAttribute("loading", "lazy");
        NativeButton open =
                new NativeButton("", click -> PhotoDialog.of(photo, words).open());
        open.add(small);
        open.addClassName("kw-photo-open");
        open.setAriaLabel("Enlarge the photo: " + words);
        TextField caption = new TextField();
        caption.setAriaLabel("Caption of the photo: " + words);
        caption.setPlaceholder("Caption");
        caption.setMaxLength(300);
        caption.setValue(photo.caption() == null ? "" : photo.caption());
        caption.setValueChangeMode(ValueChangeMode.ON_BLUR);
        caption.addValueChangeListener(change -> album.caption(photo.id(), change.getValue(), Visitor.name()));
        Button delete = new Button("Delete", click -> delete(photo));
        delete.addThemeVariants(ButtonVariant.TERTIARY);
        delete.setAriaLabel("Delete the photo: " + words);
        return new ListItem(open, new Div(caption, delete));
    }

    private void delete(Photo photo) {
        String who = Visitor.name();
        album.delete(photo.id(), who);
        Undo.offer("The photo is deleted.", () -> album.restore(photo.id(), who));
    }
}

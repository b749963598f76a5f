package org.keelweigh.ui.photo;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Image;
import org.keelweigh.shortlist.Photo;

/** One photo as large as the screen allows, over the page that stays where it is. */
final class PhotoDialog {

    private PhotoDialog() {}

    /**
     * Makes the dialog.
     *
     * @param words what the photo shows
     */
    static Dialog of(Photo photo, String words) {
        Image large = new Image(PhotoFiles.address(photo.id()), "Photo: " + words);
        large.addClassName("kw-photo-large");
        Anchor alone = new Anchor(PhotoFiles.address(photo.id()), "Open by itself");
        alone.setTarget(AnchorTarget.BLANK);
        alone.getElement().setAttribute("router-ignore", true);
        Dialog dialog = new Dialog(large);
        dialog.setHeaderTitle(words);
        dialog.getFooter().add(alone, new Button("Close", click -> dialog.close()));
        return dialog;
    }
}

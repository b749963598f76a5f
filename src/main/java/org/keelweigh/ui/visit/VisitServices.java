package org.keelweigh.ui.visit;

import java.time.Clock;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.appraisal.VisitGuide;
import org.keelweigh.shortlist.PhotoAlbum;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.VisitBook;
import org.keelweigh.ui.shell.Background;
import org.springframework.stereotype.Component;

/** Everything a visit works with. */
@Component
record VisitServices(
        ShortlistEditing editing,
        PhotoAlbum album,
        VisitBook book,
        AppraisalService appraisal,
        VisitGuide guide,
        Clock clock,
        Background background) {}

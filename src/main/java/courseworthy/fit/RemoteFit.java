package courseworthy.fit;

import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.List;

/** Whether a remote on the bar works what it is there for. Every question is total. */
final class RemoteFit {

    private RemoteFit() {
    }

    /**
     * What names a remote is worked by one that lists the same name; what names none asks for none.
     *
     * @param worked a fork, a shock or a dropper post
     * @param remote null where none is listed
     */
    static FitResult worked(Part worked, Part remote) {
        String wanted = worked.word(PartDetail.REMOTE);
        if (wanted == null) {
            return FitResult.FITS;
        }
        if (remote == null) {
            return FitResult.not("no remote for " + worked + ", which is worked by " + wanted);
        }
        List<String> works = remote.words(PartDetail.REMOTES_WORKED);
        if (works == null) {
            return FitResult.unknown("find what " + remote + " works");
        }
        return works.contains(wanted) ? FitResult.FITS : FitResult.not(remote + " does not work " + worked + ", which is worked by " + wanted);
    }
}

package courseworthy.ride;

import java.util.ArrayList;
import java.util.List;

/** The grounds of a way: each stretch as it is written, and after these the stretches where they are likely harder or easier than that. */
final class GroundClasses {

    private final List<int[]> grounds = new ArrayList<>();

    /** As written. */
    GroundClasses(int stretches) {
        for (int i = 0; i < stretches; i++) {
            grounds.add(new int[] {i, 0});
        }
    }

    /** The ground of a stretch that is so many thirds of a grade harder. */
    int of(int stretch, int thirds) {
        if (thirds == 0) {
            return stretch;
        }
        for (int i = 0; i < grounds.size(); i++) {
            if (grounds.get(i)[0] == stretch && grounds.get(i)[1] == thirds) {
                return i;
            }
        }
        grounds.add(new int[] {stretch, thirds});
        return grounds.size() - 1;
    }

    int size() {
        return grounds.size();
    }

    int stretch(int ground) {
        return grounds.get(ground)[0];
    }

    /** Technical grades harder than written. */
    double harder(int ground) {
        return grounds.get(ground)[1] / 3.0;
    }
}

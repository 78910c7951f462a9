package courseworthy;

/** Where the tool starts. */
public final class Main {

    private Main() {
    }

    public static void main(String[] args) {
        System.out.println("courseworthy");
    }
}

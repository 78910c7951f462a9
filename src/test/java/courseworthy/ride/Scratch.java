package courseworthy.ride;
import static courseworthy.ride.Invented.*;
import courseworthy.course.*;
import java.util.*;
class Scratch { public static void main(String[] a) {
 Ground ROAD = ground(Surface.ASPHALT, Smoothness.GOOD, null, null);
 Course course = Invented.course(stretch(5, 500, 0, ROAD), stretch(10, 0, 300, ROAD));
 Estimate e = estimate(course, strongAmateur(BikeKind.ROAD, 1));
 System.out.println(e.riding()+" "+e.uphill()+" "+e.load()+" "+e.canHold());
 for (Gearing g : new Gearing[]{null,new Gearing(List.of(0.8, 1.2, 1.8, 2.7, 4.5), 2.1, 60, 110),new Gearing(List.of(0.8, 1.2, 1.8, 2.2), 2.1, 60, 100),new Gearing(List.of(2.2, 2.7, 4.5), 2.1, 60, 110)}) {
 Trace t = e.trace(Change.NONE.withGearing(g)); System.out.println(g);
 for (int i=0;i<t.size();i++) System.out.printf("  %.0f %.3f m/s %.0f W %.1f s%n", t.along(i), t.speed(i), t.power(i), t.seconds(i)); }
}}

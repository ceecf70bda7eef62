package dev.penstock.validation;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.fluids.FluidLibrary;
import java.util.*;
public class RateTry {
  public static void main(String[] a) throws Exception {
    EngineStudy study = EngineStudy.open();
    ConceptReader reader = new ConceptReader(FluidLibrary.open());
    for (RatedEngine e : RatedEngine.all()) {
      if (a.length > 0 && !Arrays.asList(a).contains(e.engine().name())) continue;
      java.nio.file.Files.writeString(java.nio.file.Path.of("/tmp/rate/" + e.engine().name().replace(" ", "_") + ".toml"), e.concept());
      long t = System.nanoTime();
      try {
        EngineBalance b = study.balance(reader.parse(e.engine().name(), e.concept(), Map.of()));
        StringBuilder s = new StringBuilder();
        for (var l : b.limits()) if (!l.met()) s.append(" | ").append(l.toString().substring(0,Math.min(250,l.toString().length())));
        System.out.println(e.engine().name() + " OK " + (System.nanoTime()-t)/1000000 + " ms" + s);
      } catch (Exception x) {
        System.out.println(e.engine().name() + " -- " + x.getMessage());
      }
    }
  }
}

import org.jspecify.annotations.NullMarked;

/** Rules of a shop of its own: what an outsider's module looks like. */
@NullMarked
module dev.example.ruleauthor {
  requires dev.jetting.rules;
  requires static org.jspecify;

  provides dev.jetting.rules.RulePack with
      dev.example.ruleauthor.WinterPack,
      dev.example.ruleauthor.KitPack;
}

/** An outsider on the module path. */
module shop.consumer {
  requires dev.jetting.rules;

  provides dev.jetting.rules.RulePack with
      shop.consumer.ShopRules;
}

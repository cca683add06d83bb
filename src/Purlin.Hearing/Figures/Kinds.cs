namespace Purlin.Hearing.Figures;

/// <summary>Kinds of reading, facts and components that the hearing of figures names, as the rule book writes them.</summary>
internal static class Kinds
{
    public const string CrawlHeadroom = "crawl space headroom";
    public const string AtticHeadroom = "attic headroom";
    public const string Riser = "stair riser";
    public const string Tread = "stair tread";
    public const string RafterSpan = "rafter span";
    public const string BeamSpan = "beam span";
    public const string JoistSpan = "joist span";
    public const string Depth = "insulation depth";
    public const string CrackWidth = "crack width";
    public const string GuardOpening = "guard opening";
    public const string GuardDrop = "guard drop";
    public const string GuardHeight = "guard height";
    public const string HandrailHeight = "handrail height";
    public const string UnitFall = "outdoor unit fall across base";
    public const string OutOfPlumb = "wall out of plumb";
    public const string FloorLevel = "floor level";
    public const string SillHeight = "window sill height";
    public const string Humidity = "air relative humidity";
    public const string WoodMoisture = "wood moisture";
    public const string SurfaceMoisture = "surface moisture";
    public const string ShowerTemperature = "shower temperature";
    public const string HotWater = "hot water temperature";
    public const string FridgeTemperature = "refrigerator temperature";
    public const string AtticAir = "attic dry bulb";
    public const string LeastAmpacity = "minimum circuit ampacity";
    public const string LargestDevice = "largest device";
    public const string BoilerPressure = "boiler pressure";
    public const string WaterPressure = "static water pressure";
    public const string CarbonMonoxide = "carbon monoxide";
    public const string Flow = "functional flow";

    public const string OutdoorUnit = "outdoor unit";
    public const string HeatPump = "heat pump";
    public const string WaterHeater = "water heater";
    public const string ExpansionTank = "expansion tank";
    public const string IndoorCoil = "indoor coil";
    public const string RoofFraming = "roof framing";
    public const string RoofDeck = "roof deck";
    public const string Shower = "tub and shower";
    public const string SupplyPiping = "supply piping";
    public const string RoofCovering = "roof covering";

    public const string Heating = "heating ", WetBulb = " wet bulb", DryBulb = " dry bulb";
}

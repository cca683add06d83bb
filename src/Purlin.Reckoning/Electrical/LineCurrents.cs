namespace Purlin.Reckoning.Electrical;

/// <summary>The current of each line when appliances say which they hang on, as example D1(b) of NEC Annex D does.</summary>
internal static class LineCurrents
{
    /// <summary>None when no appliance names a line.</summary>
    internal static (double A, double B)? Of(DwellingLoads house, double total, LoadRules rules, Worksheet sheet)
    {
        var placed = house.Appliances.Where(appliance => appliance is { LineToNeutral: true, Line: not null }).ToList();
        if (placed.Count == 0) return null;
        var motors = house.Appliances.Where(appliance => appliance.Motor).ToList();
        var adder = rules.Share("motor_share");
        // What the total holds of these appliances is taken out and put back line by line, each at its own voltage.
        var own = house.Appliances.Sum(appliance => appliance.Load.VoltAmperes) + adder * house.LargestMotor.VoltAmperes;
        var rest = (total - own) / house.Volts.Volts;
        double On(string line)
        {
            double Amps(FixedAppliance appliance) => appliance.Load.VoltAmperes / (appliance.Volts ?? house.Volts.Volts);
            var here = house.Appliances.Where(appliance => appliance.Line == line || !appliance.LineToNeutral);
            var spread = house.Appliances.Where(appliance => appliance is { LineToNeutral: true, Line: null })
                .Sum(appliance => appliance.Load.VoltAmperes / house.Volts.Volts);
            var motor = motors.Where(appliance => appliance.Line == line || !appliance.LineToNeutral).Select(Amps).DefaultIfEmpty(0).Max();
            return rest + here.Sum(Amps) + spread + adder * motor;
        }
        return (sheet.Step("line-currents.step.current-line-quarter-largest", On("A"), "A"),
            sheet.Step("line-currents.step.current-line-quarter-largest-2", On("B"), "A"));
    }
}

using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Nestmark.Bench;
using Nestmark.Bench.Fuzz;
using Nestmark.Bench.Garments;
using Nestmark.Bench.Speed;
using Nestmark.Bench.Yield;

Option<string> data = new("--data") { Description = "Folder of instances, or one file", DefaultValueFactory = _ => "../shared/datasets" };
Option<double> seconds = new("--seconds") { Description = "Seconds a run", CustomParser = Number, DefaultValueFactory = _ => 10 };
Option<double> threads = new("--threads") { Description = "Threads", CustomParser = Number, DefaultValueFactory = _ => 2 };
Option<double> seed = new("--seed") { Description = "First seed", CustomParser = Number, DefaultValueFactory = _ => 1 };
Option<double> seeds = new("--seeds") { Description = "Number of seeds", CustomParser = Number, DefaultValueFactory = _ => 1 };
Option<string> only = new("--only") { Description = "Instances, comma between", DefaultValueFactory = _ => "" };
Option<string> tuning = new("--tune") { Description = "Numbers of the search to change, Name=value, comma between", DefaultValueFactory = _ => "" };
tuning.Validators.Add(found =>
{
    if (List(found.GetValueOrDefault<string>() ?? "").Select(Tuned.FaultOf).FirstOrDefault(fault => fault is not null) is { } fault)
        found.AddError(fault);
});
Option<bool> processor = new("--processor-time") { Description = "Count processor seconds of the whole process, not wall clock" };
Option<string> results = new("--out") { Description = "File for the results", DefaultValueFactory = _ => "" };
Option<string> trace = new("--trace") { Description = "Beginning of the names of two files, .csv and .svg, for the best length over time", DefaultValueFactory = _ => "" };

Command yield = new("yield", "Search benchmark instances and print what they yield") { data, seconds, threads, seed, seeds, only, tuning, processor, results, trace };
yield.SetAction(parsed => YieldCommand.Run(
    new YieldOptions(
        parsed.GetValue(data)!, parsed.GetValue(seconds), parsed.GetValue(processor) ? ClockKind.Processor : ClockKind.Wall, (int)parsed.GetValue(threads), (long)parsed.GetValue(seed), (int)parsed.GetValue(seeds),
        List(parsed.GetValue(only)!).ToHashSet(), List(parsed.GetValue(tuning)!),
        parsed.GetValue(results)!, parsed.GetValue(trace)!),
    Console.Out));

Option<double> minutes = new("--minutes") { Description = "Minutes for each reader", CustomParser = Number, DefaultValueFactory = _ => 10 };
Option<string> fixtures = new("--fixtures") { Description = "Folder of files to start from", DefaultValueFactory = _ => "fixtures" };
Option<string> kept = new("--kept") { Description = "Folder for inputs that fail", DefaultValueFactory = _ => Path.Combine(Path.GetTempPath(), "nestmark-fuzz") };
Option<string> readers = new("--only") { Description = "Readers, comma between: job, svg, dxf, pdf", DefaultValueFactory = _ => "" };
Command fuzz = new("fuzz", "Read changed fixtures and say what throws, hangs or swells") { minutes, readers, seed, fixtures, kept };
fuzz.SetAction(parsed => FuzzCommand.Run(
    new FuzzOptions(parsed.GetValue(minutes), List(parsed.GetValue(readers)!).ToHashSet(), (long)parsed.GetValue(seed), parsed.GetValue(fixtures)!, parsed.GetValue(kept)!),
    Console.Out));

Option<double> longSeconds = new("--seconds") { Description = "Seconds a run; a twelfth of them for the short runs of length", CustomParser = Number, DefaultValueFactory = _ => 60 };
Option<double> gap = new("--gap") { Description = "With --case: millimeters between cutting lines", CustomParser = Number };
Option<double> tilt = new("--tilt") { Description = "With --case: largest deviation from the grain in degrees", CustomParser = Number };
Option<string> one = new("--case") { Description = "Measure one garment in this process and print its figures as JSON", DefaultValueFactory = _ => "" };
Option<GarmentRunKind> kind = new("--run") { Description = "With --case: what to measure" };
Option<string> parts = new("--only") { Description = $"Parts, comma between: {string.Join(", ", GarmentsCommand.Parts)}", DefaultValueFactory = _ => "" };
Option<string> cases = new("--garments") { Description = "Garments, comma between", DefaultValueFactory = _ => "" };

Command garments = new("garments", "Search invented garments, each run in a process of its own, and compare with the limits of issue 3") { parts, cases, threads, seed, seeds, longSeconds, gap, tilt, tuning, one, kind };
garments.SetAction(parsed =>
{
    GarmentOptions options = new(parsed.GetValue(one)!, parsed.GetValue(kind), parsed.GetValue(longSeconds), (int)parsed.GetValue(threads), (long)parsed.GetValue(seed), (int)parsed.GetValue(seeds), parsed.GetValue(gap), parsed.GetValue(tilt), List(parsed.GetValue(tuning)!));
    return options.Case.Length > 0
        ? GarmentsCommand.RunOne(options, Console.Out)
        : GarmentsCommand.RunAll(options, List(parsed.GetValue(parts)!), List(parsed.GetValue(cases)!), Console.Out);
});

Option<string> filter = new("--filter") { Description = "Benchmarks to run, with * for any letters", DefaultValueFactory = _ => "*" };
Command speed = new("speed", "Time the parts of the program and count what they allocate") { filter };
speed.SetAction(parsed => SpeedCommand.Run(parsed.GetValue(filter)!));

RootCommand root = new("Nestmark benchmarks") { yield, garments, speed, fuzz };
ParseResult parsedArguments = root.Parse(args);
if (parsedArguments.Errors.Count > 0)
{
    foreach (ParseError error in parsedArguments.Errors)
        Console.Error.WriteLine(error.Message);
    return 2;
}
return parsedArguments.Invoke();

static string[] List(string text) => text.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

static double Number(ArgumentResult argument)
{
    if (argument.Tokens.Count == 1 && double.TryParse(argument.Tokens[0].Value, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number))
        return number;
    argument.AddError("Expected a number.");
    return 0;
}

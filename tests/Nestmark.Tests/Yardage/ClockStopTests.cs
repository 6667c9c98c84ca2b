using Nestmark.Yardage;

namespace Nestmark.Tests.Yardage;

public sealed class ClockStopTests
{
    [Fact]
    public void No_seconds_are_spent_at_once() => Assert.Equal(1, new ClockStop(0).SpentRatio(0));

    [Fact]
    public void A_million_seconds_are_hardly_begun_and_never_run_backward()
    {
        ClockStop stop = new(1e6);
        double first = stop.SpentRatio(0);
        double second = stop.SpentRatio(1_000_000);
        Assert.InRange(first, 0, 0.001);
        Assert.InRange(second, first, 0.001);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_no_time_is_the_callers_mistake(double seconds) => Assert.Throws<ArgumentException>(() => new ClockStop(seconds));
}

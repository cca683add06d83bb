using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Purlin.Field.Device;
using Purlin.Field.Issue;
using Purlin.Field.MyWording;
using Purlin.Field.Shell;
using Purlin.Field.Visits;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#app");
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddScoped<Phone>();
builder.Services.AddScoped<OpenVisit>();
builder.Services.AddScoped<Hand>();
builder.Services.AddScoped<OwnBook>();
builder.Services.AddScoped<VisitOpening>();
builder.Services.AddScoped<ArchiveDoor>();
builder.Services.AddScoped<PhoneSeal>();
await builder.Build().RunAsync();

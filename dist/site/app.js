var ir={matrix:60,cell:60,snapshot:60,choose:60,line:60,spread:60,sweep:60,fitout:60,kit:300,catalogue:60};var D={version:"0.2.0",requests:{matrix:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable_dielectric:{nullable:!1,type:"text",longest:40,default:"solid_pe"},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},families:{nullable:!0,type:"list",items:{type:"text",longest:40},least:1,most:100,default:null},bands:{nullable:!0,type:"list",items:{type:"text",longest:40},least:0,most:100,default:null},frequencies_hz:{nullable:!1,type:"list",items:{unit:"Hz",type:"number",min:1e5,max:5e10},least:0,most:200,default:[]},powers_w:{nullable:!1,type:"list",items:{unit:"W",type:"number",min:0,max:1e5},least:1,most:24,default:[0,5,50,100,400,1500]}},cell:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable_dielectric:{nullable:!1,type:"text",longest:40,default:"solid_pe"},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},family:{nullable:!1,type:"text",longest:40,default:null},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100}},snapshot:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable_dielectric:{nullable:!1,type:"text",longest:40,default:"solid_pe"},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},families:{nullable:!0,type:"list",items:{type:"text",longest:40},least:1,most:100,default:null},bands:{nullable:!0,type:"list",items:{type:"text",longest:40},least:0,most:100,default:null},frequencies_hz:{nullable:!1,type:"list",items:{unit:"Hz",type:"number",min:1e5,max:5e10},least:0,most:200,default:[]},powers_w:{nullable:!1,type:"list",items:{unit:"W",type:"number",min:0,max:1e5},least:1,most:24,default:[0,5,50,100,400,1500]},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100}},choose:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable_dielectric:{nullable:!1,type:"text",longest:40,default:"solid_pe"},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},use:{nullable:!1,type:"choice",choices:["receive","transmit"],default:"transmit"},bands:{nullable:!1,type:"list",items:{type:"text",longest:40},least:0,most:100,default:["20m"]},frequencies_hz:{nullable:!1,type:"list",items:{unit:"Hz",type:"number",min:1e5,max:5e10},least:0,most:200,default:[]},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},installation:{nullable:!1,type:"text",longest:40,default:"fixed"},cable:{nullable:!0,type:"text",longest:40,default:null},port:{nullable:!0,type:"text",longest:40,default:null},largest_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},plan:{nullable:!0,type:"text",longest:40,default:null}},line:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:1,most:60,default:null},load:{nullable:!1,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},receiver:{nullable:!1,default:{noise_figure_db:6,environment:"rural",preamplifier:null}},explain:{nullable:!0,type:"number",min:0,max:59,default:null}},spread:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:1,most:60,default:null},load:{nullable:!1,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},draws:{nullable:!1,type:"number",min:100,max:1e5,default:1e4},seed:{nullable:!1,type:"number",min:0,max:4294967295,default:1},length_tolerance:{nullable:!1,type:"number",min:0,max:.5,default:.02}},sweep:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:1,most:16,default:null},load:{nullable:!1,default:null},touchstone:{nullable:!1,type:"text",longest:3e6,default:null},earlier:{nullable:!0,type:"text",longest:3e6,default:null},length_tolerance:{nullable:!1,type:"number",min:.001,max:.1,default:.02},window_shape:{nullable:!0,type:"number",min:.5,max:14,default:null}},fitout:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:1,most:60,default:null},station:{nullable:!1,type:"text",longest:60,default:""},date:{nullable:!1,type:"text",longest:10,default:""},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null}},kit:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable_dielectric:{nullable:!1,type:"text",longest:40,default:"solid_pe"},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},ports:{nullable:!1,type:"list",items:{},least:2,most:60,default:null},pairs:{nullable:!0,type:"list",items:{type:"list",items:{type:"number",min:0,max:59},least:2,most:2},least:0,most:400,default:null},owned:{nullable:!1,type:"list",items:{},least:0,most:200,default:[]},most_in_series:{nullable:!1,type:"number",min:1,max:4,default:2},most_loss_db:{nullable:!1,unit:"dB",type:"number",min:.01,max:20,default:.5},impedance_steps:{nullable:!1,type:"boolean",default:!1},search:{nullable:!1,type:"choice",choices:["quick","thorough"],default:"quick"}},catalogue:{entry:{nullable:!0,type:"text",longest:40,default:null}}},parts:{CableRun:{cable:{nullable:!1,type:"text",longest:40,default:null},length_m:{nullable:!1,unit:"m",type:"number",min:.01,max:1e4,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},GivenImpedance:{resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:1e6,default:null},reactance_ohm:{nullable:!1,unit:"Ω",type:"number",min:-1e6,max:1e6,default:0}},GivenVswr:{vswr:{nullable:!1,type:"number",min:1,max:100,default:null},angle_deg:{nullable:!1,unit:"°",type:"number",min:-360,max:360,default:0}},ImpedancePoint:{frequency_hz:{nullable:!1,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:1e6,default:null},reactance_ohm:{nullable:!1,unit:"Ω",type:"number",min:-1e6,max:1e6,default:0}},ImpedanceTable:{points:{nullable:!1,type:"list",items:{},least:2,most:2e3,default:null}},Joint:{family:{nullable:!1,type:"text",longest:40,default:null},adapter_to:{nullable:!0,type:"text",longest:40,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},exposure:{nullable:!0,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:null},name:{nullable:!1,type:"text",longest:60,default:""}},KnownEnd:{what:{nullable:!1,type:"choice",choices:["matched","open","short"],default:null}},MeasuredLoad:{touchstone:{nullable:!1,type:"text",longest:3e6,default:null}},MeasuredPart:{touchstone:{nullable:!1,type:"text",longest:3e6,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},OwnedAdapter:{one_family:{nullable:!1,type:"text",longest:40,default:null},one_gender:{nullable:!1,type:"choice",choices:["jack","plug"],default:null},other_family:{nullable:!1,type:"text",longest:40,default:null},other_gender:{nullable:!1,type:"choice",choices:["jack","plug"],default:null},count:{nullable:!1,type:"number",min:1,max:20,default:1}},Part:{loss_db:{nullable:!1,unit:"dB",type:"number",min:0,max:100,default:null},vswr:{nullable:!1,type:"number",min:1,max:20,default:1},power_limit_w:{nullable:!0,unit:"W",type:"number",min:.001,max:1e6,default:null},voltage_limit_v:{nullable:!0,unit:"V",type:"number",min:1,max:1e6,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},Port:{family:{nullable:!1,type:"text",longest:40,default:null},gender:{nullable:!1,type:"choice",choices:["jack","plug"],default:null},highest_frequency_hz:{nullable:!1,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},impedance_ohm:{nullable:!0,unit:"Ω",type:"number",min:25,max:150,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},Preamplifier:{before_element:{nullable:!1,type:"number",min:0,max:59,default:null},gain_db:{nullable:!1,unit:"dB",type:"number",min:0,max:60,default:15},noise_figure_db:{nullable:!1,unit:"dB",type:"number",min:0,max:60,default:1}},Receiver:{noise_figure_db:{nullable:!1,unit:"dB",type:"number",min:0,max:60,default:6},environment:{nullable:!1,type:"text",longest:40,default:"rural"},preamplifier:{nullable:!0,default:null}}},bands:[{id:"2200m",name:"2200 m",regions:["1","2","3"]},{id:"630m",name:"630 m",regions:["1","2","3"]},{id:"160m",name:"160 m",regions:["1","2","3"]},{id:"80m",name:"80 m",regions:["1","2","3"]},{id:"60m",name:"60 m",regions:["1","2","3"]},{id:"40m",name:"40 m",regions:["1","2","3"]},{id:"30m",name:"30 m",regions:["1","2","3"]},{id:"20m",name:"20 m",regions:["1","2","3"]},{id:"17m",name:"17 m",regions:["1","2","3"]},{id:"15m",name:"15 m",regions:["1","2","3"]},{id:"12m",name:"12 m",regions:["1","2","3"]},{id:"10m",name:"10 m",regions:["1","2","3"]},{id:"6m",name:"6 m",regions:["1","2","3"]},{id:"4m",name:"4 m",regions:["1"]},{id:"2m",name:"2 m",regions:["1","2","3"]},{id:"1_25m",name:"1.25 m",regions:["2"]},{id:"70cm",name:"70 cm",regions:["1","2","3"]},{id:"33cm",name:"33 cm",regions:["2"]},{id:"23cm",name:"23 cm",regions:["1","2","3"]},{id:"13cm",name:"13 cm",regions:["1","2","3"]},{id:"9cm",name:"9 cm",regions:["1","2","3"]},{id:"5cm",name:"5 cm",regions:["1","2","3"]},{id:"3cm",name:"3 cm",regions:["1","2","3"]}],families:[{id:"uhf",name:"UHF"},{id:"mini_uhf",name:"Mini-UHF"},{id:"bnc",name:"BNC"},{id:"bnc_75",name:"BNC 75 Ω"},{id:"tnc",name:"TNC"},{id:"n",name:"N"},{id:"n_75",name:"N 75 Ω"},{id:"c",name:"C"},{id:"hn",name:"HN"},{id:"7_16",name:"7/16"},{id:"4_3_10",name:"4.3-10"},{id:"sma",name:"SMA"},{id:"rp_sma",name:"RP-SMA"},{id:"smb",name:"SMB"},{id:"mcx",name:"MCX"},{id:"mmcx",name:"MMCX"},{id:"f",name:"F"},{id:"3_5mm",name:"3.5 mm"},{id:"2_92mm",name:"2.92 mm"}],modes:[{id:"ssb",name:"SSB, conversation",duty_factor:{value:.2,source:"fcc_oet_65b",kind:"handbook",note:"no speech processing"},on_time_s:null,off_time_s:null,note:""},{id:"ssb_processed",name:"SSB, processed",duty_factor:{value:.5,source:"fcc_oet_65b",kind:"handbook",note:"heavy speech processing; a later list gives 0.4"},on_time_s:null,off_time_s:null,note:""},{id:"cw",name:"CW, conversation",duty_factor:{value:.4,source:"fcc_oet_65b",kind:"handbook",note:""},on_time_s:null,off_time_s:null,note:""},{id:"cw_eme",name:"CW, EME",duty_factor:{value:.44,source:"mode_comparison",kind:"handbook",note:"the word PARIS over and over, 22 of 50 dots with the key down"},on_time_s:{value:150,source:"eme_handbook_1988",kind:"handbook",note:"twelve periods to the half hour"},off_time_s:{value:150,source:"eme_handbook_1988",kind:"handbook",note:"the other station's period"},note:"Sends without a break for every other period of 2.5 min, the custom on 432 MHz and above; 2 min on 144 MHz heats no more."},{id:"fm",name:"FM voice",duty_factor:{value:1,source:"fcc_oet_65b",kind:"handbook",note:""},on_time_s:null,off_time_s:null,note:""},{id:"dmr",name:"DMR, one time slot",duty_factor:{value:.5,source:"etsi_ts_102_361",kind:"handbook",note:"one slot of 30 ms in two, constant envelope in it; the burst itself, 27.5 ms, would make it 0.46"},on_time_s:null,off_time_s:null,note:"What a handheld or mobile sends. A repeater sends both slots: take FM voice for it."},{id:"am",name:"AM voice (PEP is 4 × carrier)",duty_factor:{value:.375,source:"am_article_2002",kind:"handbook",note:"full modulation by a sine, (1 + 1/2)/4: voice lies between it and 0.25, the carrier alone; one exposure list prints 1.0 without saying of which power"},on_time_s:null,off_time_s:null,note:"With the power given as peak envelope power; 100 W for a carrier of 25 W."},{id:"rtty",name:"RTTY, FSK or AFSK",duty_factor:{value:1,source:"fcc_oet_65b",kind:"handbook",note:""},on_time_s:null,off_time_s:null,note:""},{id:"psk31",name:"PSK31",duty_factor:{value:.75,source:"mode_comparison",kind:"handbook",note:"as many ones as zeros; 0.5 while idle, two tones"},on_time_s:null,off_time_s:null,note:""},{id:"ft8",name:"FT8",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:12.64,source:"weak_signal_guide",kind:"handbook",note:"79 symbols at 6.25 baud"},off_time_s:{value:17.36,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other 15 s sequence: 12.64 s on, 17.36 s off, 42 % of the time."},{id:"ft4",name:"FT4",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:5.04,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:9.96,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other 7.5 s sequence: 5.04 s on, 9.96 s off, 34 % of the time."},{id:"jt65",name:"JT65, EME",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:46.8,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:73.2,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other minute: 46.8 s on, 73.2 s off, 39 % of the time. JT4 and JT9 are within 3 s of it."},{id:"q65_60",name:"Q65-60, EME",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:51,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:69,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other minute: 51 s on, 69 s off, 43 % of the time. Q65-30 sends the same share in shorter overs."},{id:"q65_300",name:"Q65-300",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:293.8,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:306.2,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other five minutes, the hardest rhythm of Q65: 293.8 s on, 306.2 s off, 49 % of the time."},{id:"msk144",name:"MSK144",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:30,source:"weak_signal_guide",kind:"handbook",note:"frames without gaps through the sequence; chapter on VHF features: 15 s or 30 s by local custom"},off_time_s:{value:30,source:"weak_signal_guide",kind:"handbook",note:"the other station's sequence"},note:"Sends in every other 30 s sequence; 15 s, also customary, heat no more."},{id:"wspr",name:"WSPR",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:110.6,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:129.4,source:"common_practice",kind:"common practice",note:"rest of two sequences of 120 s; most beacons send less often"},note:"Sends in every other two-minute sequence, the hardest usual beacon rhythm."},{id:"sstv",name:"SSTV",duty_factor:{value:1,source:"sstv_chapter_2012",kind:"handbook",note:"follows from the tone plan, one tone at a time: 1200 Hz for sync, 1500 to 2300 Hz for the picture"},on_time_s:null,off_time_s:null,note:"Analogue pictures; one lasts from 36 s (Robot 36) to four and a half minutes (Scottie DX)."},{id:"carrier",name:"Carrier (tune-up)",duty_factor:{value:1,source:"fcc_oet_65b",kind:"handbook",note:""},on_time_s:null,off_time_s:null,note:""}],cable_dielectrics:[{id:"solid_pe",name:"Solid polyethylene",highest_temperature_c:{value:85,source:"mil_dtl_17",kind:"memory",note:""}},{id:"foam_pe",name:"Foamed polyethylene",highest_temperature_c:{value:85,source:"memory",kind:"memory",note:"some cables 65 to 75 °C; one maker rates power at an inner conductor of 100 °C"}},{id:"ptfe",name:"PTFE",highest_temperature_c:{value:200,source:"mil_dtl_17",kind:"memory",note:""}}],conditions:[{id:"new",name:"New and clean",added_resistance_ohm:{value:0,source:"common_practice",kind:"common practice",note:""}},{id:"worn",name:"Worn",added_resistance_ohm:{value:.002,source:"mil_prf_39012_slash_sheets",kind:"memory",note:"the greatest growth the sheets allow after conditioning is 0.5 to 2 mΩ, by family"}},{id:"corroded",name:"Corroded",added_resistance_ohm:{value:.05,source:"common_practice",kind:"common practice",note:"a joint that has taken water or lost its plating; single cases are far worse"}}],cautions:["A margin is an estimate; the data of your own part, your local codes and your licence come first.","RF burns: never touch or open a joint with power on it. Key down only when everybody is clear.","RF exposure: keep within the exposure limits of your country; work them out before transmitting.","High voltage and mains: switch off, unplug and discharge before you open an amplifier, a tuner or a feed point.","Lightning: bond and earth by your local code, fit arresters, and never work on a line when storms are near.","Heights and masts: trained people, proper gear, never alone and never near power lines."],cables:[{id:"rg_174",name:"RG-174",dielectric:"solid_pe",diameter_m:.00257},{id:"rg_58",name:"RG-58",dielectric:"solid_pe",diameter_m:.00495},{id:"rg_223",name:"RG-223",dielectric:"solid_pe",diameter_m:.0054},{id:"rg_213",name:"RG-213",dielectric:"solid_pe",diameter_m:.0103},{id:"rg_214",name:"RG-214",dielectric:"solid_pe",diameter_m:.0108},{id:"rg_8x",name:"RG-8X",dielectric:"foam_pe",diameter_m:.0061},{id:"foam_6_mm",name:"Foam 6.1 mm",dielectric:"foam_pe",diameter_m:.0061},{id:"foam_10_mm",name:"Foam 10.3 mm",dielectric:"foam_pe",diameter_m:.0103},{id:"foam_15_mm",name:"Foam 15 mm",dielectric:"foam_pe",diameter_m:.015},{id:"corrugated_7_8",name:"Corrugated foam 7/8 in",dielectric:"foam_pe",diameter_m:.028},{id:"rg_178",name:"RG-178",dielectric:"ptfe",diameter_m:.0018},{id:"rg_316",name:"RG-316",dielectric:"ptfe",diameter_m:.00249},{id:"rg_142",name:"RG-142",dielectric:"ptfe",diameter_m:.00495},{id:"rg_400",name:"RG-400",dielectric:"ptfe",diameter_m:.00495},{id:"rg_405",name:"RG-405",dielectric:"ptfe",diameter_m:.0022},{id:"rg_402",name:"RG-402",dielectric:"ptfe",diameter_m:.00358},{id:"rg_59",name:"RG-59",dielectric:"solid_pe",diameter_m:.00615},{id:"rg_6",name:"RG-6",dielectric:"foam_pe",diameter_m:.0069}],installations:[{id:"fixed",name:"Fixed",least_vibration:"none"},{id:"portable",name:"Portable",least_vibration:"none"},{id:"vehicle",name:"Vehicle",least_vibration:"vehicle"},{id:"mast",name:"Mast or tower",least_vibration:"vehicle"}],noise_environments:[{id:"city",name:"City"},{id:"residential",name:"Residential"},{id:"rural",name:"Rural"},{id:"quiet_rural",name:"Quiet rural"},{id:"galactic",name:"Galactic"}],pack:{values:{nominal_impedance_ohm:{unit:"Ω",min:10,max:300},inner_diameter_m:{unit:"m",min:1e-5,max:.2},outer_diameter_m:{unit:"m",min:1e-4,max:.5},section_length_m:{unit:"m",min:1e-4,max:1},bead_length_m:{unit:"m",min:1e-5,max:1},body_diameter_m:{unit:"m",min:.001,max:1},body_length_m:{unit:"m",min:.001,max:1},rated_frequency_hz:{unit:"Hz",min:1e6,max:2e11},vswr_typical:{unit:"1",min:1.001,max:10},working_voltage_rms_v:{unit:"V",min:1,max:1e5},proof_voltage_rms_v:{unit:"V",min:1,max:2e5},altitude_voltage_rms_v:{unit:"V",min:1,max:1e5},centre_contact_resistance_ohm:{unit:"Ω",min:1e-6,max:1},outer_contact_resistance_ohm:{unit:"Ω",min:1e-6,max:1},lowest_temperature_c:{unit:"°C",min:-100,max:100},highest_temperature_c:{unit:"°C",min:20,max:500},thermal_time_constant_s:{unit:"s",min:.1,max:1e5},durability_matings:{unit:"matings",min:1,max:1e6},coupling_torque_nm:{unit:"N·m",min:0,max:500},cable_diameter_m:{unit:"m",min:1e-4,max:.2},cable_conductor_area_m2:{unit:"m²",min:1e-9,max:.01},stainless_torque_nm:{unit:"N·m",min:0,max:500},usual_cable_diameter_m:{unit:"m",min:1e-4,max:.2}},house_limit:{id:{nullable:!1,type:"text",longest:40,default:null},power_w:{nullable:!1,type:"number",min:0,max:1e5,default:null},reason:{nullable:!1,type:"text",longest:300,default:null},source:{nullable:!1,type:"text",longest:100,default:null},kind:{nullable:!1,type:"choice",choices:["common practice","datasheet","handbook","memory","standard"],default:null},interfaces:{nullable:!1,type:"list",items:{type:"text",longest:40},least:0,most:100,default:[]},bands:{nullable:!1,type:"list",items:{type:"text",longest:40},least:0,most:100,default:[]}},kinds:["standard","datasheet","handbook","common practice","memory"],seen:["read","as quoted","from memory","computed"],most_bytes:1e6},longest_s:ir,first_bands:["160m","80m","40m","30m","20m","17m","15m","12m","10m","6m","2m","70cm","23cm","13cm","5cm","3cm"],matrix:{families:[{id:"uhf",name:"UHF",summary:"Threaded 1930s interface without constant impedance",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 6.341 GHz, one wave travels; above it no figure holds.",no_figures:"Its impedance is known from the geometry, so the match is computed at any frequency.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 300 MHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Threaded coupling suits vibration: vehicle; asked: none.",wear:"Good for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 4.95 to 10.3 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"mini_uhf",name:"Mini-UHF",summary:"Small threaded interface of mobile radios, no constant impedance",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 15.62 GHz, one wave travels; above it no figure holds.",no_figures:"Its impedance is known from the geometry, so the match is computed at any frequency.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 2 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Threaded coupling suits vibration: vehicle; asked: none.",wear:"Good for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.49 to 6.2 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"bnc",name:"BNC",summary:"Quick bayonet interface for instruments and small cables",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 16.1 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 4 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 4 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Bayonet coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.49 to 6.2 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"bnc_75",name:"BNC 75 Ω",summary:"Bayonet interface of video and reception, 75 Ω",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 23.47 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 3 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 1 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Bayonet coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.5 to 7 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"tnc",name:"TNC",summary:"Threaded relative of BNC, steady under vibration and at microwaves",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 16.1 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 11 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 11 GHz.",weather:"Mated it stands: exposed; asked: indoor.",vibration:"Threaded coupling suits vibration: severe; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.49 to 10.3 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"n",name:"N",summary:"Threaded 7 mm interface, air dielectric at the mating plane",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 19.4 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 18 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 11 GHz.",weather:"Mated it stands: exposed; asked: indoor.",vibration:"Threaded coupling suits vibration: severe; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.49 to 28 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"n_75",name:"N 75 Ω",summary:"N interface with the thin 75 Ω centre contact",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 21.79 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 3 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 1.5 GHz.",weather:"Mated it stands: exposed; asked: indoor.",vibration:"Threaded coupling suits vibration: severe; asked: none.",wear:"Good for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 6.1 to 16.5 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"c",name:"C",summary:"Large bayonet interface of the power class between N and HN",receive_only:!1,gate_reasons:{te11:"By a guessed bore or filling its TE11 cutoff is 10.47 GHz; the published limit, higher, counts.",no_figures:"Published match figures end at 11 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP54. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 10 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Bayonet coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 4.95 to 10.8 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"hn",name:"HN",summary:"High-voltage threaded interface, larger than N",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 9.516 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 6 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 4 GHz.",weather:"Mated it stands: exposed; asked: indoor.",vibration:"Threaded coupling suits vibration: severe; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 10.3 to 13.9 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"7_16",name:"7/16",summary:"Large threaded interface for high power and low intermodulation",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 8.466 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 7.5 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 6 GHz.",weather:"Mated it stands: exposed; asked: indoor.",vibration:"Threaded coupling suits vibration: severe; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 10.3 to 28 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"4_3_10",name:"4.3-10",summary:"Threaded 10 mm interface of mobile base stations: 7/16 class power in a smaller body, low intermodulation",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 13.57 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 12 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 6 GHz.",weather:"Mated it stands: exposed; asked: indoor.",vibration:"Threaded coupling suits vibration: vehicle; asked: none.",wear:"Good for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 6 to 16 mm; no cable given.",cold:"Rated down to -40 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"sma",name:"SMA",summary:"Threaded subminiature interface, solid PTFE to the mating plane",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 25.2 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 26.5 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 18 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Threaded coupling suits vibration: severe; asked: none.",wear:"Good for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.8 to 6.2 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"rp_sma",name:"RP-SMA",summary:"SMA with the centre contacts exchanged, common on wireless network gear; no standard of its own",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 25.2 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 18 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 6 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Threaded coupling suits vibration: vehicle; asked: none.",wear:"Good for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.1 to 6.2 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"smb",name:"SMB",summary:"Snap-on subminiature interface for the inside of equipment",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 34.89 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 10 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 4 GHz.",weather:"Mated it stands: indoor; asked: indoor.",vibration:"Snap coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.8 to 3 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"mcx",name:"MCX",summary:"Snap-on microminiature interface, about a third smaller than SMB",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 43.62 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 6 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 6 GHz.",weather:"Mated it stands: indoor; asked: indoor.",vibration:"Snap coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.8 to 3 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"mmcx",name:"MMCX",summary:"Snap-on micro-miniature interface that turns freely when mated",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 65.42 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 6 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 6 GHz.",weather:"Mated it stands: indoor; asked: indoor.",vibration:"Snap coupling suits vibration: none; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.1 to 2.6 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"f",name:"F",summary:"Threaded 75 Ω interface of cable television and satellite reception; the cable conductor is the pin",receive_only:!0,gate_reasons:{te11:"Below its TE11 cutoff, 16.68 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 3 GHz.",receive_only:"The pin is the cable's own, often copper-clad steel, conductor in a spring clip; no standard gives it a voltage or power rating.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 1 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Threaded coupling suits vibration: none; asked: none.",wear:"Good for 50 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 6.1 to 10.3 mm; no cable given.",cold:"Rated down to -40 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"3_5mm",name:"3.5 mm",summary:"Precision air-dielectric interface that mates with SMA",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 38.8 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 33 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 26.5 GHz.",weather:"Mated it stands: indoor; asked: indoor.",vibration:"Threaded coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.2 to 5.4 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""},{id:"2_92mm",name:"2.92 mm",summary:"Precision air-dielectric interface to 40 GHz that mates with SMA and 3.5 mm",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 46.48 GHz, one wave travels; above it no figure holds.",no_figures:"Published match figures end at 40 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",customary_frequency:"Customarily used up to 40 GHz.",weather:"Mated it stands: indoor; asked: indoor.",vibration:"Threaded coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.2 to 3.6 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",house:"The station has set itself no limit here."},pack:""}],columns:[{id:"160m",name:"160 m",low_hz:181e4,high_hz:2e6,pack:""},{id:"80m",name:"80 m",low_hz:35e5,high_hz:38e5,pack:""},{id:"40m",name:"40 m",low_hz:7e6,high_hz:72e5,pack:""},{id:"30m",name:"30 m",low_hz:101e5,high_hz:1015e4,pack:""},{id:"20m",name:"20 m",low_hz:14e6,high_hz:1435e4,pack:""},{id:"17m",name:"17 m",low_hz:18068e3,high_hz:18168e3,pack:""},{id:"15m",name:"15 m",low_hz:21e6,high_hz:2145e4,pack:""},{id:"12m",name:"12 m",low_hz:2489e4,high_hz:2499e4,pack:""},{id:"10m",name:"10 m",low_hz:28e6,high_hz:297e5,pack:""},{id:"6m",name:"6 m",low_hz:5e7,high_hz:52e6,pack:""},{id:"2m",name:"2 m",low_hz:144e6,high_hz:146e6,pack:""},{id:"70cm",name:"70 cm",low_hz:43e7,high_hz:44e7,pack:""},{id:"23cm",name:"23 cm",low_hz:124e7,high_hz:13e8,pack:""},{id:"13cm",name:"13 cm",low_hz:23e8,high_hz:245e7,pack:""},{id:"5cm",name:"5 cm",low_hz:565e7,high_hz:585e7,pack:""},{id:"3cm",name:"3 cm",low_hz:1e10,high_hz:105e8,pack:""}],powers_w:[0,5,50,100,400,1500],limits:["heat","voltage","match"],gates:[{id:"te11",name:"TE11 cutoff",hard:!0},{id:"no_figures",name:"Published figures",hard:!0},{id:"receive_only",name:"Receive only",hard:!0},{id:"no_heat_room",name:"Air temperature",hard:!0},{id:"immersion",name:"Immersion",hard:!0},{id:"customary_frequency",name:"Customary frequency",hard:!1},{id:"weather",name:"Weather",hard:!1},{id:"vibration",name:"Vibration",hard:!1},{id:"wear",name:"Wear",hard:!1},{id:"cable_fit",name:"Cable fit",hard:!1},{id:"cold",name:"Cold",hard:!1},{id:"house",name:"House limit",hard:!0}],margin_db:[[[47.33,24.9809,14.9809,11.9706,5.94997,.209656],[41.7549,24.9809,14.9809,11.9706,5.94997,.209656],[36.204,24.9809,14.9809,11.9706,5.94997,.209656],[33.2215,24.9809,14.9809,11.9706,5.94997,.209656],[30.214,24.9809,14.9809,11.9706,5.94997,.209656],[28.1652,24.9809,14.9809,11.9706,5.94997,.209656],[26.7231,24.9809,14.9809,11.9706,5.94997,.209656],[25.3967,24.9809,14.9809,11.9706,5.94997,.209656],[23.8975,23.8975,14.9809,11.9706,5.94997,.209656],[19.0368,19.0368,14.9809,11.9706,5.94997,.209656],[10.1129,10.1129,10.1129,10.1129,5.32407,-.416242],[.921267,.921267,.921267,.921267,.840788,-4.89952],[-5.51148,-5.51148,-5.51148,-5.51148,-5.51148,-9.45051],[-5.71976,-5.71976,-5.71976,-5.71976,-6.40877,-12.1491],[-5.71976,-5.71976,-5.71976,-5.71976,-10.1403,-15.8806],[null,null,null,null,null,null]],[[59.6601,21.4383,11.4383,8.42799,2.40739,-3.33292],[54.085,21.0023,11.0023,7.99202,1.97142,-3.76889],[48.5341,20.4653,10.4653,7.455,1.43441,-4.30591],[45.5514,20.131,10.131,7.12065,1.10005,-4.64026],[42.5437,19.7601,9.76007,6.74977,.729167,-5.01115],[40.4947,19.4877,9.48771,6.47741,.456814,-5.2835],[39.0523,19.2864,9.28639,6.27609,.255495,-5.48482],[37.7256,19.0942,9.09421,6.08391,.0633144,-5.677],[36.2259,18.8689,8.86893,5.85863,-.161973,-5.90229],[31.3616,18.0802,8.08023,5.06993,-.950673,-6.69099],[22.4012,16.4055,6.40548,3.39518,-2.62542,-8.36573],[12.8802,12.8802,4.32951,1.31921,-4.70139,-10.4417],[3.99777,3.99777,2.03266,-.977639,-6.99824,-12.7386],[.00657255,.00657255,.00657255,-2.43603,-8.45663,-14.1969],[-.829173,-.829173,-1.57335,-4.58365,-10.6042,-16.3446],[-.829173,-.829173,-3.11811,-6.12841,-12.149,-17.8893]],[[60.0304,25.8435,15.8435,12.8332,6.81261,1.0723],[54.4553,24.8428,14.8428,11.8325,5.81194,.071625],[48.9044,23.7588,13.7588,10.7485,4.72785,-1.01246],[45.9218,23.1444,13.1444,10.1341,4.11347,-1.62684],[42.9141,22.5047,12.5047,9.49441,3.47381,-2.2665],[40.8651,22.0583,12.0583,9.04797,3.02737,-2.71294],[39.4228,21.7392,11.7392,8.72887,2.70827,-3.03204],[38.0962,21.4423,11.4423,8.43199,2.41139,-3.32893],[36.5966,21.103,11.103,8.09267,2.07207,-3.66825],[31.7333,19.977,9.97703,6.96673,.946127,-4.79419],[22.7825,17.8116,7.81161,4.80131,-1.21929,-6.9596],[13.3506,13.3506,5.37983,2.36953,-3.65107,-9.39139],[5.26878,5.26878,2.8655,-.144797,-6.1654,-11.9057],[3.69213,3.69213,1.32504,-1.68526,-7.70586,-13.4462],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[47.406,25.6427,15.6427,12.6324,6.61175,.87144],[41.831,24.6408,14.6408,11.6305,5.60991,-.1304],[36.2801,23.558,13.558,10.5477,4.52706,-1.21325],[33.2975,22.9454,12.9454,9.93514,3.91454,-1.82577],[30.2899,22.3086,12.3086,9.29835,3.27775,-2.46257],[28.241,21.8648,11.8648,8.85448,2.83388,-2.90643],[26.7988,21.5478,11.5478,8.53753,2.51693,-3.22338],[25.4723,21.2532,11.2532,8.24289,2.22229,-3.51802],[23.9729,20.9167,10.9167,7.90642,1.88582,-3.8545],[19.1109,19.1109,9.80262,6.79232,.771722,-4.96859],[10.1738,10.1738,7.67223,4.66193,-1.35867,-7.09899],[.862332,.862332,.862332,.862332,-3.72583,-9.46615],[-6.54673,-6.54673,-6.54673,-6.54673,-6.54673,-11.8756],[-7.81182,-7.81182,-7.81182,-7.81182,-7.81182,-13.3285],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[60.0304,26.9829,16.9829,13.9726,7.95204,2.21173],[54.4553,25.9823,15.9823,12.972,6.95137,1.21106],[48.9044,24.8982,14.8982,11.8879,5.86729,.126972],[45.9218,24.2838,14.2838,11.2735,5.25291,-.487407],[42.9141,23.6441,13.6441,10.6338,4.61325,-1.12707],[40.8651,23.1977,13.1977,10.1874,4.1668,-1.57351],[39.4228,22.8786,12.8786,9.8683,3.8477,-1.89261],[38.0962,22.5817,12.5817,9.57142,3.55082,-2.18949],[36.5966,22.2424,12.2424,9.2321,3.2115,-2.52881],[31.7333,21.1165,11.1165,8.10616,2.08556,-3.65475],[22.7825,18.951,8.95104,5.94074,-.0798582,-5.82017],[13.3506,13.3506,6.51926,3.50896,-2.51164,-8.25195],[5.26878,5.26878,4.00494,.994637,-5.02596,-10.7663],[3.69213,3.69213,2.46448,-.545822,-6.56642,-12.3067],[3.69213,3.69213,.244189,-2.76611,-8.78671,-14.527],[3.69213,3.69213,-1.32938,-4.33968,-10.3603,-16.1006]],[[58.4468,31.1547,21.1547,18.1444,12.1238,6.38344],[52.8717,30.4111,20.4111,17.4008,11.3802,5.63989],[47.3208,29.5574,19.5574,16.5471,10.5265,4.78616],[44.3382,29.0536,19.0536,16.0433,10.0227,4.28235],[41.3306,28.5152,18.5152,15.5049,9.48426,3.74395],[39.2816,28.1317,18.1317,15.1214,9.10075,3.36044],[37.8394,27.8539,17.8539,14.8436,8.82299,3.08267],[36.5128,27.5929,17.5929,14.5826,8.56197,2.82165],[35.0133,27.2916,17.2916,14.2813,8.26072,2.5204],[30.1507,26.2715,16.2715,13.2612,7.24063,1.50032],[21.207,21.207,14.2354,11.2251,5.20449,-.53582],[11.8413,11.8413,11.8413,8.84853,2.82793,-2.91238],[4.36635,4.36635,4.36635,4.36635,.29469,-5.44562],[3.69213,3.69213,3.69213,3.69213,-1.28811,-7.02842],[3.69213,3.69213,3.69213,2.41861,-3.60199,-9.3423],[3.69213,3.69213,3.69213,.76122,-5.25938,-10.9997]],[[45.8224,26.8233,16.8233,13.813,7.79244,2.05212],[40.2474,26.1957,16.1957,13.1854,7.16485,1.42454],[34.6965,25.457,15.457,12.4467,6.42608,.68577],[31.7139,25.013,15.013,12.0027,5.98212,.241802],[28.7064,24.5328,14.5328,11.5225,5.50188,-.238435],[26.6576,24.1874,14.1874,11.1771,5.15649,-.583818],[25.2155,23.9357,13.9357,10.9254,4.90477,-.83554],[23.8891,23.698,13.698,10.6877,4.6671,-1.07321],[22.3899,22.3899,13.4224,10.4121,4.39154,-1.34877],[17.5292,17.5292,12.4805,9.47016,3.44957,-2.29075],[8.60524,8.60524,8.60524,7.55943,1.53883,-4.20148],[-.59157,-.59157,-.59157,-.59157,-.719878,-6.46019],[-7.28198,-7.28198,-7.28198,-7.28198,-7.28198,-8.87713],[-7.81182,-7.81182,-7.81182,-7.81182,-7.81182,-10.385],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[56.7112,30.182,20.182,17.1717,11.1511,5.41076],[51.1361,29.432,19.432,16.4217,10.4011,4.66079],[45.5852,28.565,18.565,15.5547,9.53413,3.79382],[42.6026,28.0504,18.0504,15.0401,9.01948,3.27917],[39.595,27.4978,17.4978,14.4875,8.4669,2.72659],[37.5461,27.1025,17.1025,14.0922,8.0716,2.33129],[36.1039,26.8153,16.8153,13.805,7.78439,2.04408],[34.7773,26.5447,16.5447,13.5344,7.51379,1.77348],[33.2779,26.2315,16.2315,13.2212,7.2006,1.46029],[28.4156,25.1637,15.1637,12.1534,6.13278,.392465],[19.4755,19.4755,12.9952,9.9849,3.9643,-1.77601],[10.1433,10.1433,10.1433,7.38396,1.36336,-4.37695],[2.96447,2.96447,2.96447,2.96447,-1.49338,-7.23369],[2.54,2.54,2.54,2.54,-3.31508,-9.05539],[2.54,2.54,2.54,.0127383,-6.00786,-11.7482],[2.54,2.54,1.08892,-1.92138,-7.94198,-13.6823]],[[56.3935,32.7407,22.7407,19.7304,13.7098,7.96953],[50.8185,31.9601,21.9601,18.9498,12.9292,7.18886],[45.2676,31.0619,21.0619,18.0516,12.031,6.29072],[42.285,30.5305,20.5305,17.5202,11.4996,5.75929],[39.2775,29.961,19.961,16.9507,10.9301,5.18982],[37.2286,29.5542,19.5542,16.5439,10.5233,4.78302],[35.7865,29.2589,19.2589,16.2486,10.228,4.48772],[34.46,28.9809,18.9809,15.9706,9.94996,4.20965],[32.9608,28.6592,18.6592,15.6489,9.62831,3.888],[28.0995,27.5636,17.5636,14.5533,8.53267,2.79236],[19.1699,19.1699,15.3404,12.3301,6.30947,.569154],[9.93561,9.93561,9.93561,9.66127,3.64067,-2.09964],[3.71786,3.71786,3.71786,3.71786,.70485,-5.03546],[3.69213,3.69213,3.69213,3.69213,-1.16802,-6.90833],[3.69213,3.69213,3.69213,2.08709,-3.93351,-9.67382],[null,null,null,null,null,null]],[[69.5537,36.7819,26.7819,23.7716,17.751,12.0107],[63.9725,36.2182,26.2182,23.2079,17.1873,11.447],[58.4101,35.5403,25.5403,22.53,16.5094,10.7691],[55.4176,35.1259,25.1259,22.1156,16.095,10.3547],[52.396,34.6721,24.6721,21.6618,15.6412,9.90084],[50.3344,34.3422,24.3422,21.3319,15.3113,9.571],[48.8813,34.1001,24.1001,21.0898,15.0692,9.32885],[47.5431,33.8701,23.8701,20.8598,14.8392,9.09889],[46.0281,33.6019,23.6019,20.5916,14.571,8.83068],[41.0937,32.6726,22.6726,19.6623,13.6417,7.90139],[31.8703,30.7316,20.7316,17.7213,11.7007,5.96037],[21.8661,21.8661,18.3455,15.3352,9.31464,3.57433],[14.7283,14.7283,14.7283,12.6789,6.6583,.917989],[12.5275,12.5275,12.5275,10.9741,4.95346,-.786854],[8.26285,8.26285,8.26285,8.26285,2.42017,-3.32014],[null,null,null,null,null,null]],[[71.4093,27.99,17.99,14.9797,8.95912,3.21881],[65.8328,27.99,17.99,14.9797,8.95912,3.21881],[60.2791,27.99,17.99,14.9797,8.95912,3.21881],[57.2941,27.99,17.99,14.9797,8.95912,3.21881],[54.2831,27.99,17.99,14.9797,8.95912,3.21881],[52.2311,27.99,17.99,14.9797,8.95912,3.21881],[50.7863,27.99,17.99,14.9797,8.95912,3.21881],[49.4569,27.99,17.99,14.9797,8.95912,3.21881],[47.9537,27.99,17.99,14.9797,8.95912,3.21881],[43.0736,27.99,17.99,14.9797,8.95912,3.21881],[34.061,27.99,17.99,14.9797,8.95912,3.21881],[24.5282,24.5282,16.6872,13.6769,7.65632,1.91601],[17.0948,17.0948,14.2166,11.2063,5.18573,-.554581],[16.1378,16.1378,12.6926,9.68233,3.66173,-2.07858],[14.17,14.17,10.4874,7.47707,1.45647,-4.28384],[12.0807,12.0807,8.92027,5.90997,-.110626,-5.85094]],[[68.3708,23.2894,13.2894,10.2791,4.25848,-1.48183],[62.7948,22.8125,12.8125,9.80222,3.78162,-1.95869],[57.242,22.2295,12.2295,9.21922,3.19862,-2.5417],[54.2577,21.8686,11.8686,8.85833,2.83773,-2.90258],[51.2478,21.4699,11.4699,8.45965,2.43905,-3.30126],[49.1967,21.1782,11.1782,8.16785,2.14725,-3.59306],[47.7525,20.9629,10.9629,7.95263,1.93203,-3.80828],[46.4239,20.7578,10.7578,7.74753,1.72693,-4.01338],[44.9217,20.5178,10.5178,7.50748,1.48688,-4.25343],[40.0455,19.6802,9.6802,6.6699,.649303,-5.09101],[31.0361,17.9107,7.91072,4.90042,-1.12018,-6.86049],[21.3733,15.7209,5.72093,2.71063,-3.30997,-9.05028],[12.1877,12.1877,3.28692,.276617,-5.74398,-11.4843],[8.15766,8.15766,1.73088,-1.27942,-7.30002,-13.0403],[6.49983,6.49983,-.575894,-3.58619,-9.60679,-15.3471],[4.93213,4.93213,-2.24368,-5.25398,-11.2746,-17.0149]],[[68.3697,22.1085,12.1085,9.09816,3.07756,-2.66276],[62.7927,21.7499,11.7499,8.73958,2.71898,-3.02134],[57.2381,21.2986,11.2986,8.28834,2.26774,-3.47257],[54.2522,21.0127,11.0127,8.00235,1.98175,-3.75856],[51.24,20.6911,10.6911,7.68083,1.66023,-4.08009],[49.1868,20.4523,10.4523,7.44196,1.42136,-4.31895],[47.741,20.2743,10.2743,7.26395,1.24335,-4.49696],[46.4104,20.1032,10.1032,7.09291,1.07231,-4.668],[44.9057,19.9014,9.90136,6.89106,.870459,-4.86985],[40.0175,19.1838,9.18383,6.17353,.152927,-5.58739],[30.9583,17.6102,7.61019,4.59989,-1.42071,-7.16102],[21.1458,15.5811,5.58107,2.57077,-3.44983,-9.19014],[11.571,11.571,3.25551,.245206,-5.77539,-11.5157],[7.1134,7.1134,1.7437,-1.2666,-7.2872,-13.0275],[4.57881,4.57881,-.520353,-3.53065,-9.55125,-15.2916],[2.33219,2.33219,-2.16856,-5.17886,-11.1995,-16.9398]],[[67.9871,18.1807,8.18068,5.17038,-.850225,-6.59054],[62.4102,17.8983,7.89831,4.88801,-1.13259,-6.8729],[56.8558,17.5369,7.53686,4.52656,-1.49404,-7.23435],[53.8701,17.3045,7.30446,4.29416,-1.72644,-7.46676],[50.8581,17.0403,7.04028,4.02998,-1.99062,-7.73094],[48.8051,16.8421,6.84213,3.83183,-2.18877,-7.92908],[47.3594,16.6935,6.69347,3.68317,-2.33743,-8.07774],[46.029,16.5499,6.54986,3.53956,-2.48104,-8.22135],[44.5244,16.3794,6.37944,3.36914,-2.65146,-8.39177],[39.637,15.766,5.76601,2.75571,-3.26489,-9.0052],[30.5777,14.3859,4.3859,1.3756,-4.645,-10.3853],[20.731,12.5568,2.55683,-.453472,-6.47407,-12.2144],[10.7521,10.4224,.422388,-2.58791,-8.60851,-14.3488],[4.95148,4.95148,-.97576,-3.98606,-10.0067,-15.747],[-.474693,-.474693,-3.07656,-6.08686,-12.1075,-17.8478],[null,null,null,null,null,null]],[[83.0092,15.994,5.99401,2.98371,-3.03689,-8.7772],[77.424,15.7529,5.75286,2.74256,-3.27804,-9.01835],[71.854,15.4412,5.44124,2.43094,-3.58966,-9.32997],[68.8548,15.2392,5.23923,2.22893,-3.79167,-9.53198],[65.8236,15.0081,5.00812,1.99782,-4.02278,-9.7631],[63.7533,14.8338,4.83379,1.82349,-4.19711,-9.93742],[62.2927,14.7025,4.70246,1.69216,-4.32844,-10.0687],[60.9463,14.5752,4.57518,1.56488,-4.45572,-10.196],[59.4205,14.4236,4.42362,1.41332,-4.60728,-10.3476],[54.4337,13.8737,3.87374,.863445,-5.15716,-10.8975],[44.9729,12.6155,2.61553,-.39477,-6.41537,-12.1557],[34.0257,10.9152,.915181,-2.09512,-8.11572,-13.856],[21.6935,8.90268,-1.09732,-4.10762,-10.1282,-15.8685],[13.7531,7.57571,-2.42429,-5.43459,-11.4552,-17.1955],[3.94957,3.94957,-4.42387,-7.43417,-13.4548,-19.1951],[null,null,null,null,null,null]],[[81.2348,13.5862,3.5862,.575901,-5.4447,-11.185],[75.6523,13.3612,3.36117,.350867,-5.66973,-11.41],[70.0872,13.0696,3.06956,.0592614,-5.96134,-11.7017],[67.0924,12.8801,2.88007,-.130226,-6.15083,-11.8911],[64.0674,12.6629,2.66289,-.347409,-6.36801,-12.1083],[62.0026,12.4988,2.49881,-.511493,-6.53209,-12.2724],[60.5467,12.3751,2.37506,-.635241,-6.65584,-12.3962],[59.2055,12.255,2.25501,-.755292,-6.77589,-12.5162],[57.6864,12.1119,2.11193,-.898374,-6.91897,-12.6593],[52.7311,11.5917,1.59171,-1.41859,-7.43919,-13.1795],[43.3944,10.3965,.396509,-2.61379,-8.63439,-14.3747],[32.7627,8.77611,-1.22389,-4.23419,-10.2548,-15.9951],[20.9665,6.8598,-3.1402,-6.1505,-12.1711,-17.9114],[13.2882,5.60115,-4.39885,-7.40915,-13.4298,-19.1701],[2.85379,2.85379,-6.28479,-9.29509,-15.3157,-21.056],[null,null,null,null,null,null]],[[51.3914,null,null,null,null,null],[45.815,null,null,null,null,null],[40.2616,null,null,null,null,null],[37.2768,null,null,null,null,null],[34.2662,null,null,null,null,null],[32.2144,null,null,null,null,null],[30.7697,null,null,null,null,null],[29.4405,null,null,null,null,null],[27.9376,null,null,null,null,null],[23.0581,null,null,null,null,null],[14.0405,null,null,null,null,null],[4.40843,null,null,null,null,null],[-4.25683,null,null,null,null,null],[-7.14174,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[86.5625,21.9694,11.9694,8.95912,2.93852,-2.80179],[80.9843,21.9694,11.9694,8.95912,2.93852,-2.80179],[75.4275,21.9694,11.9694,8.95912,2.93852,-2.80179],[72.4398,21.9694,11.9694,8.95912,2.93852,-2.80179],[69.4249,21.9694,11.9694,8.95912,2.93852,-2.80179],[67.3693,21.9694,11.9694,8.95912,2.93852,-2.80179],[65.9213,21.9694,11.9694,8.95912,2.93852,-2.80179],[64.5885,21.9694,11.9694,8.95912,2.93852,-2.80179],[63.0807,21.9694,11.9694,8.95912,2.93852,-2.80179],[58.1784,21.521,11.521,8.51074,2.49014,-3.25018],[49.0589,19.6139,9.61394,6.60364,.583036,-5.15728],[39.0552,17.4077,7.40769,4.39739,-1.62321,-7.36352],[28.8773,15.106,5.10603,2.09573,-3.92487,-9.66519],[23.4223,13.7029,3.70285,.692552,-5.32805,-11.0684],[19.4573,11.7037,1.70374,-1.30656,-7.32716,-13.0675],[16.4379,10.3072,.30723,-2.70307,-8.72367,-14.464]],[[80.0703,18.6196,8.6196,5.6093,-.411298,-6.15161],[74.4937,18.6196,8.6196,5.6093,-.411298,-6.15161],[68.9398,18.6196,8.6196,5.6093,-.411298,-6.15161],[65.9547,18.6196,8.6196,5.6093,-.411298,-6.15161],[62.9434,18.6196,8.6196,5.6093,-.411298,-6.15161],[60.8911,18.6196,8.6196,5.6093,-.411298,-6.15161],[59.4459,18.6196,8.6196,5.6093,-.411298,-6.15161],[58.1162,18.6196,8.6196,5.6093,-.411298,-6.15161],[56.6125,18.6196,8.6196,5.6093,-.411298,-6.15161],[51.7292,18.6196,8.6196,5.6093,-.411298,-6.15161],[42.6877,18.6196,8.6196,5.6093,-.411298,-6.15161],[32.9048,16.6113,6.61128,3.60098,-2.41962,-8.15993],[23.1859,14.3084,4.30842,1.29812,-4.72248,-10.4628],[17.9383,12.9059,2.90589,-.104413,-6.12501,-11.8653],[14.3781,10.9093,.909328,-2.10097,-8.12157,-13.8619],[12.2402,9.5157,-.484305,-3.4946,-9.5152,-15.2555]]],margin_high_db:[[[51.6688,27.99,17.99,14.9797,8.95912,3.21881],[46.0938,27.99,17.99,14.9797,8.95912,3.21881],[40.5428,27.99,17.99,14.9797,8.95912,3.21881],[37.5602,27.99,17.99,14.9797,8.95912,3.21881],[34.5526,27.99,17.99,14.9797,8.95912,3.21881],[32.5037,27.99,17.99,14.9797,8.95912,3.21881],[31.0614,27.99,17.99,14.9797,8.95912,3.21881],[29.7349,27.99,17.99,14.9797,8.95912,3.21881],[28.2354,27.99,17.99,14.9797,8.95912,3.21881],[23.3726,23.3726,17.99,14.9797,8.95912,3.21881],[14.428,14.428,14.428,13.9425,7.92192,2.18161],[5.05136,5.05136,5.05136,5.05136,3.34977,-2.39054],[-2.66403,-2.66403,-2.66403,-2.66403,-2.66403,-6.97301],[-3.88822,-3.88822,-3.88822,-3.88822,-3.9391,-9.67941],[-3.88822,-3.88822,-3.88822,-3.88822,-7.67586,-13.4162],[null,null,null,null,null,null]],[[73.1073,24.5115,14.5115,11.5012,5.48062,-.259693],[67.5323,24.5115,14.5115,11.5012,5.48062,-.259693],[61.9813,24.5115,14.5115,11.5012,5.48062,-.259693],[58.9986,24.5115,14.5115,11.5012,5.48062,-.259693],[55.9909,24.5115,14.5115,11.5012,5.48062,-.259693],[53.9419,24.5115,14.5115,11.5012,5.48062,-.259693],[52.4995,24.5115,14.5115,11.5012,5.48062,-.259693],[51.1727,24.5115,14.5115,11.5012,5.48062,-.259693],[49.673,24.5115,14.5115,11.5012,5.48062,-.259693],[44.8084,24.5115,14.5115,11.5012,5.48062,-.259693],[35.8448,23.0263,13.0263,10.016,3.99536,-1.74495],[26.2949,20.7111,10.7111,7.70084,1.68024,-4.06007],[17.1652,17.1652,8.26108,5.25078,-.769817,-6.51013],[12.4869,12.4869,6.74152,3.73122,-2.28938,-8.02969],[10.1807,10.1807,4.53492,1.52462,-4.49598,-10.2363],[10.1807,10.1807,2.96284,-.0474602,-6.06806,-11.8084]],[[68.8473,27.99,17.99,14.9797,8.95912,3.21881],[63.2723,27.99,17.99,14.9797,8.95912,3.21881],[57.7213,27.99,17.99,14.9797,8.95912,3.21881],[54.7387,27.99,17.99,14.9797,8.95912,3.21881],[51.731,27.8987,17.8987,14.8884,8.86779,3.12747],[49.682,27.4375,17.4375,14.4272,8.40656,2.66625],[48.2397,27.1087,17.1087,14.0984,8.07782,2.3375],[46.9131,26.8035,16.8035,13.7932,7.77259,2.03228],[45.4135,26.4553,16.4553,13.445,7.42443,1.68412],[40.5501,25.3046,15.3046,12.2943,6.27373,.533421],[31.5986,23.1066,13.1066,10.0963,4.07569,-1.66462],[22.1605,20.6533,10.6533,7.643,1.6224,-4.11791],[14.0408,14.0408,8.12644,5.11614,-.904463,-6.64478],[12.4444,12.4444,6.58121,3.57091,-2.44969,-8.19],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[48.9933,27.99,17.99,14.9797,8.95912,3.21881],[43.4182,27.99,17.99,14.9797,8.95912,3.21881],[37.8673,27.99,17.99,14.9797,8.95912,3.21881],[34.8847,27.99,17.99,14.9797,8.95912,3.21881],[31.8771,27.7005,17.7005,14.6902,8.66963,2.92932],[29.8282,27.2421,17.2421,14.2318,8.21121,2.4709],[28.386,26.9157,16.9157,13.9054,7.88476,2.14445],[27.0594,26.6128,16.6128,13.6025,7.58191,1.8416],[25.56,25.56,16.2676,13.2573,7.23674,1.49642],[20.6975,20.6975,15.1292,12.1189,6.09829,.357978],[11.756,11.756,11.756,9.95642,3.93582,-1.80449],[2.40598,2.40598,2.40598,2.40598,1.54751,-4.19281],[-5.20528,-5.20528,-5.20528,-5.20528,-5.20528,-6.61466],[-6.55674,-6.55674,-6.55674,-6.55674,-6.55674,-8.0723],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[67.3419,27.99,17.99,14.9797,8.95912,3.21881],[61.7669,27.99,17.99,14.9797,8.95912,3.21881],[56.2159,27.99,17.99,14.9797,8.95912,3.21881],[53.2333,27.99,17.99,14.9797,8.95912,3.21881],[50.2257,27.99,17.99,14.9797,8.95912,3.21881],[48.1767,27.99,17.99,14.9797,8.95912,3.21881],[46.7344,27.99,17.99,14.9797,8.95912,3.21881],[45.4077,27.99,17.99,14.9797,8.95912,3.21881],[43.9081,27.99,17.99,14.9797,8.95912,3.21881],[39.0447,27.0655,17.0655,14.0552,8.03465,2.29433],[30.0933,24.8675,14.8675,11.8572,5.8366,.0962898],[20.6556,20.6556,12.4142,9.40392,3.38332,-2.357],[12.5383,12.5383,9.88735,6.87705,.85645,-4.88386],[10.9431,10.9431,8.34212,5.33182,-.688776,-6.42909],[10.9431,10.9431,6.11736,3.10706,-2.91354,-8.65385],[10.9431,10.9431,4.54175,1.53145,-4.48915,-10.2295]],[[65.7583,34.0106,24.0106,21.0003,14.9797,9.23941],[60.1833,33.6768,23.6768,20.6665,14.6459,8.90562],[54.6323,32.712,22.712,19.7017,13.6811,7.9408],[51.6497,32.1533,22.1533,19.143,13.1224,7.38204],[48.6421,31.5634,21.5634,18.5531,12.5325,6.79219],[46.5932,31.1473,21.1473,18.137,12.1164,6.37604],[45.1509,30.8477,20.8477,17.8374,11.8168,6.07651],[43.8243,30.5676,20.5676,17.5573,11.5367,5.79636],[42.3248,30.2457,20.2457,17.2354,11.2148,5.47451],[37.4621,29.1661,19.1661,16.1558,10.1352,4.39493],[28.5175,27.0473,17.0473,14.037,8.01638,2.27607],[19.1437,19.1437,14.6134,11.6031,5.58246,-.157857],[11.6261,11.6261,11.6261,9.03538,3.01478,-2.72553],[10.9431,10.9431,10.4497,7.43938,1.41878,-4.32154],[10.9431,10.9431,8.12343,5.11313,-.907474,-6.64779],[10.9431,10.9431,6.46047,3.45017,-2.57043,-8.31074]],[[47.4097,33.3857,23.3857,20.3754,14.3548,8.61446],[41.8346,32.5391,22.5391,19.5288,13.5082,7.76793],[36.2837,31.5907,21.5907,18.5804,12.5598,6.81948],[33.3012,31.0408,21.0408,18.0305,12.0099,6.26954],[30.2936,30.2936,20.4599,17.4496,11.429,5.68866],[28.2448,28.2448,20.0499,17.0396,11.019,5.27871],[26.8026,26.8026,19.7548,16.7445,10.7239,4.98361],[25.4762,25.4762,19.4788,16.4685,10.4479,4.70759],[23.9769,23.9769,19.1617,16.1514,10.1308,4.39049],[19.1155,19.1155,18.0984,15.0881,9.0675,3.32718],[10.1852,10.1852,10.1852,10.1852,6.9844,1.24409],[.934616,.934616,.934616,.934616,.934616,-1.13689],[-5.98743,-5.98743,-5.98743,-5.98743,-5.98743,-5.98743],[-6.55674,-6.55674,-6.55674,-6.55674,-6.55674,-6.55674],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[63.3743,36.5723,26.5723,23.562,17.5414,11.8011],[57.7993,35.7014,25.7014,22.6911,16.6705,10.9302],[52.2484,34.7214,24.7214,21.7111,15.6905,9.95019],[49.2658,34.1507,24.1507,21.1404,15.1198,9.37946],[46.2582,33.5455,23.5455,20.5352,14.5146,8.77429],[44.2092,33.1168,23.1168,20.1065,14.0859,8.34561],[42.767,32.8073,22.8073,19.797,13.7764,8.03612],[41.4405,32.5171,22.5171,19.5068,13.4862,7.74593],[39.941,32.1828,22.1828,19.1725,13.1519,7.41164],[35.0786,31.0541,21.0541,18.0438,12.0232,6.28288],[26.1372,26.1372,18.8011,15.7908,9.77023,4.02992],[16.7933,16.7933,16.1424,13.1321,7.11145,1.37114],[9.55857,9.55857,9.55857,9.55857,4.22108,-1.51923],[9.12694,9.12694,9.12694,8.40766,2.38706,-3.35325],[9.12694,9.12694,8.71429,5.70399,-.316612,-6.05692],[9.12694,9.12694,6.77562,3.76532,-2.25528,-7.99559]],[[61.8817,39.4403,29.4403,26.43,20.4094,14.6691],[56.3066,38.5398,28.5398,25.5295,19.5089,13.7686],[50.7557,37.531,27.531,24.5207,18.5001,12.7598],[47.7731,36.9451,26.9451,23.9348,17.9142,12.1739],[44.7656,36.3248,26.3248,23.3145,17.2939,11.5536],[42.7168,35.8859,25.8859,22.8756,16.855,11.1147],[41.2746,35.5693,25.5693,22.559,16.5384,10.798],[39.9481,35.2724,25.2724,22.2621,16.2415,10.5012],[38.4488,34.9307,24.9307,21.9204,15.8998,10.1594],[33.5874,33.5874,23.7771,20.7668,14.7462,9.00589],[24.6565,24.6565,21.4743,18.464,12.4434,6.70311],[15.4111,15.4111,15.4111,15.4111,9.72081,3.9805],[9.15299,9.15299,9.15299,9.15299,6.75413,1.01382],[9.12694,9.12694,9.12694,9.12694,4.87012,-.870189],[9.12694,9.12694,9.12694,8.11553,2.09493,-3.64539],[null,null,null,null,null,null]],[[78.4636,41.3284,31.3284,28.3181,22.2975,16.5572],[72.8823,40.3708,30.3708,27.3605,21.3399,15.5996],[67.3198,39.3169,29.3169,26.3066,20.286,14.5457],[64.3271,38.7127,28.7127,25.7024,19.6818,13.9415],[61.3053,38.0786,28.0786,25.0683,19.0477,13.3074],[59.2435,37.6331,27.6331,24.6228,18.6022,12.8619],[57.7902,37.3132,27.3132,24.3029,18.2823,12.542],[56.4518,37.0145,27.0145,24.0042,17.9836,12.2432],[54.9366,36.6717,26.6717,23.6614,17.6408,11.9005],[50.001,35.5247,25.5247,22.5144,16.4938,10.7534],[40.7726,33.2741,23.2741,20.2638,14.2432,8.50284],[30.7521,30.6695,20.6695,17.6592,11.6386,5.89826],[23.566,23.566,17.882,14.8717,8.85105,3.11074],[21.3043,21.3043,16.1276,13.1173,7.09675,1.35644],[16.8645,16.8645,13.5494,10.5391,4.51849,-1.22182],[null,null,null,null,null,null]],[[77.533,27.99,17.99,14.9797,8.95912,3.21881],[71.9564,27.99,17.99,14.9797,8.95912,3.21881],[66.4027,27.99,17.99,14.9797,8.95912,3.21881],[63.4177,27.99,17.99,14.9797,8.95912,3.21881],[60.4067,27.99,17.99,14.9797,8.95912,3.21881],[58.3546,27.99,17.99,14.9797,8.95912,3.21881],[56.9097,27.99,17.99,14.9797,8.95912,3.21881],[55.5803,27.99,17.99,14.9797,8.95912,3.21881],[54.0771,27.99,17.99,14.9797,8.95912,3.21881],[49.1968,27.99,17.99,14.9797,8.95912,3.21881],[40.1832,27.99,17.99,14.9797,8.95912,3.21881],[30.6469,27.99,17.99,14.9797,8.95912,3.21881],[23.2026,23.2026,17.99,14.9797,8.95912,3.21881],[22.2333,22.2333,17.9149,14.9046,8.884,3.14369],[20.2297,20.2297,15.6882,12.6779,6.65734,.917023],[18.092,18.092,14.1114,11.1011,5.08047,-.659845]],[[76.7811,27.99,17.99,14.9797,8.95912,3.21881],[71.205,27.99,17.99,14.9797,8.95912,3.21881],[65.6521,27.99,17.99,14.9797,8.95912,3.21881],[62.6678,27.99,17.99,14.9797,8.95912,3.21881],[59.6578,27.99,17.99,14.9797,8.95912,3.21881],[57.6066,27.99,17.99,14.9797,8.95912,3.21881],[56.1624,27.99,17.99,14.9797,8.95912,3.21881],[54.8337,27.99,17.99,14.9797,8.95912,3.21881],[53.3313,27.99,17.99,14.9797,8.95912,3.21881],[48.4546,27.99,17.99,14.9797,8.95912,3.21881],[39.443,26.7486,16.7486,13.7383,7.71767,1.97736],[29.7725,24.4993,14.4993,11.489,5.46839,-.271926],[20.5597,20.5597,12.0268,9.01648,2.99588,-2.74443],[16.4904,16.4904,10.4554,7.44511,1.42451,-4.3158],[14.7483,14.7483,8.13403,5.12373,-.896874,-6.63719],[13.0701,13.0701,6.45961,3.44931,-2.57129,-8.31161]],[[73.2158,24.5115,14.5115,11.5012,5.48062,-.259693],[67.6387,24.5115,14.5115,11.5012,5.48062,-.259693],[62.0839,24.5115,14.5115,11.5012,5.48062,-.259693],[59.098,24.5115,14.5115,11.5012,5.48062,-.259693],[56.0857,24.5115,14.5115,11.5012,5.48062,-.259693],[54.0324,24.5115,14.5115,11.5012,5.48062,-.259693],[52.5864,24.5115,14.5115,11.5012,5.48062,-.259693],[51.2557,24.5115,14.5115,11.5012,5.48062,-.259693],[49.7508,24.5115,14.5115,11.5012,5.48062,-.259693],[44.862,24.5115,14.5115,11.5012,5.48062,-.259693],[35.7997,24.5115,14.5115,11.5012,5.48062,-.259693],[25.9775,24.4993,14.4993,11.489,5.46839,-.271926],[16.3695,16.3695,12.0268,9.01648,2.99588,-2.74443],[11.8636,11.8636,10.4554,7.44511,1.42451,-4.3158],[9.21726,9.21726,8.13403,5.12373,-.896874,-6.63719],[6.82785,6.82785,6.45961,3.44931,-2.57129,-8.31161]],[[74.6146,24.5115,14.5115,11.5012,5.48062,-.259693],[69.0376,24.5115,14.5115,11.5012,5.48062,-.259693],[63.4829,24.2735,14.2735,11.2632,5.24264,-.497677],[60.497,23.9894,13.9894,10.9791,4.95851,-.781806],[57.4847,23.6704,13.6704,10.6601,4.63947,-1.10084],[55.4315,23.4336,13.4336,10.4233,4.40274,-1.33757],[53.9855,23.2574,13.2574,10.2471,4.22647,-1.51384],[52.6549,23.0881,13.0881,10.0778,4.05723,-1.68308],[51.15,22.8886,12.8886,9.87826,3.85766,-1.88265],[46.2611,22.1805,12.1805,9.17025,3.14965,-2.59067],[37.1954,20.6357,10.6357,7.6254,1.6048,-4.13551],[27.3284,18.6606,8.66059,5.65029,-.370306,-6.11062],[17.284,16.421,6.42097,3.41067,-2.60993,-8.35024],[11.3811,11.3811,4.97798,1.96768,-4.05292,-9.79323],[5.65829,5.65829,2.83237,-.177926,-6.19853,-11.9388],[null,null,null,null,null,null]],[[88.9049,23.2447,13.2447,10.2344,4.2138,-1.52651],[83.3196,22.9062,12.9062,9.89587,3.87527,-1.86504],[77.7493,22.4793,12.4793,9.46902,3.44842,-2.29189],[74.7499,22.2084,12.2084,9.19808,3.17748,-2.56284],[71.7184,21.9035,11.9035,8.89316,2.87256,-2.86775],[69.6478,21.6768,11.6768,8.66648,2.64588,-3.09444],[68.1869,21.5078,11.5078,8.49747,2.47687,-3.26345],[66.8403,21.3453,11.3453,8.33502,2.31442,-3.42589],[65.3141,21.1536,11.1536,8.14327,2.12267,-3.61764],[60.3255,20.4717,10.4717,7.46145,1.44085,-4.29946],[50.8572,18.9779,8.97787,5.96757,-.0530308,-5.79334],[39.887,17.0618,7.06182,4.05152,-1.96908,-7.70939],[27.4888,14.8895,4.88945,1.87915,-4.14145,-9.88176],[19.4615,13.4929,3.49294,.482641,-5.53796,-11.2783],[9.39618,9.39618,1.42271,-1.58759,-7.60819,-13.3485],[null,null,null,null,null,null]],[[87.0532,18.6196,8.6196,5.6093,-.411298,-6.15161],[81.4705,18.6196,8.6196,5.6093,-.411298,-6.15161],[75.9051,18.6196,8.6196,5.6093,-.411298,-6.15161],[72.91,18.6196,8.6196,5.6093,-.411298,-6.15161],[69.8846,18.6196,8.6196,5.6093,-.411298,-6.15161],[67.8195,18.6196,8.6196,5.6093,-.411298,-6.15161],[66.3633,18.6196,8.6196,5.6093,-.411298,-6.15161],[65.0217,18.6196,8.6196,5.6093,-.411298,-6.15161],[63.5022,18.6196,8.6196,5.6093,-.411298,-6.15161],[58.5447,18.4412,8.4412,5.43091,-.589695,-6.33001],[49.1993,16.9071,6.90706,3.89676,-2.12384,-7.86415],[38.5405,14.9774,4.97743,1.96713,-4.05347,-9.79378],[26.6671,12.8318,2.83182,-.178476,-6.19908,-11.9394],[18.8885,11.473,1.47302,-1.53728,-7.55788,-13.2982],[8.15065,8.15065,-.515437,-3.52574,-9.54634,-15.2866],[null,null,null,null,null,null]],[[51.4342,null,null,null,null,null],[45.858,null,null,null,null,null],[40.3051,null,null,null,null,null],[37.3207,null,null,null,null,null],[34.3106,null,null,null,null,null],[32.2594,null,null,null,null,null],[30.8152,null,null,null,null,null],[29.4865,null,null,null,null,null],[27.9841,null,null,null,null,null],[23.1077,null,null,null,null,null],[14.1025,null,null,null,null,null],[4.50673,null,null,null,null,null],[-4.08134,null,null,null,null,null],[-6.90261,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[90.4769,24.5115,14.5115,11.5012,5.48062,-.259693],[84.8987,24.5115,14.5115,11.5012,5.48062,-.259693],[79.3419,24.5115,14.5115,11.5012,5.48062,-.259693],[76.3541,24.5115,14.5115,11.5012,5.48062,-.259693],[73.3392,24.5115,14.5115,11.5012,5.48062,-.259693],[71.2836,24.5115,14.5115,11.5012,5.48062,-.259693],[69.8356,24.5115,14.5115,11.5012,5.48062,-.259693],[68.5028,24.5115,14.5115,11.5012,5.48062,-.259693],[66.995,24.5115,14.5115,11.5012,5.48062,-.259693],[62.0924,24.5115,14.5115,11.5012,5.48062,-.259693],[52.9724,24.5115,14.5115,11.5012,5.48062,-.259693],[42.9669,23.4732,13.4732,10.4629,4.44231,-1.29801],[32.7836,21.1484,11.1484,8.13808,2.11748,-3.62283],[27.3213,19.7361,9.73609,6.72579,.705186,-5.03513],[23.3353,17.7282,7.72817,4.71787,-1.30273,-7.04304],[20.2877,16.3275,6.32753,3.31723,-2.70337,-8.44368]],[[86.3365,21.9694,11.9694,8.95912,2.93852,-2.80179],[80.7599,21.9694,11.9694,8.95912,2.93852,-2.80179],[75.206,21.9694,11.9694,8.95912,2.93852,-2.80179],[72.2208,21.9694,11.9694,8.95912,2.93852,-2.80179],[69.2095,21.9694,11.9694,8.95912,2.93852,-2.80179],[67.1572,21.9694,11.9694,8.95912,2.93852,-2.80179],[65.712,21.9694,11.9694,8.95912,2.93852,-2.80179],[64.3822,21.9694,11.9694,8.95912,2.93852,-2.80179],[62.8785,21.9694,11.9694,8.95912,2.93852,-2.80179],[57.9949,21.9694,11.9694,8.95912,2.93852,-2.80179],[48.9524,21.9694,11.9694,8.95912,2.93852,-2.80179],[39.1664,21.9694,11.9694,8.95912,2.93852,-2.80179],[29.438,20.3502,10.3502,7.33994,1.31934,-4.42098],[24.1769,18.9388,8.93881,5.92851,-.0920918,-5.8324],[20.5794,16.9337,6.93367,3.92337,-2.09723,-7.83755],[18.3924,15.536,5.536,2.5257,-3.4949,-9.23521]]],binding:[[[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,2,1,1,1,1],[2,2,1,1,1,1],[2,2,2,2,0,0],[2,2,2,2,0,0],[2,2,2,2,2,0],[2,2,2,2,0,0],[2,2,2,2,0,0],[-1,-1,-1,-1,-1,-1]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,2,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,2,2,0,0],[2,2,2,2,2,0],[2,2,2,2,2,0],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[2,2,2,0,0,0],[2,2,2,2,0,0],[2,2,2,2,0,0],[2,2,2,0,0,0],[2,2,2,0,0,0]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,2,0,0,0],[2,2,2,2,0,0],[2,2,2,2,2,0],[2,2,2,2,2,0],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[2,2,2,0,0,0],[2,2,2,2,0,0],[2,2,2,2,0,0],[2,2,2,0,0,0],[2,2,0,0,0,0]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[2,2,2,0,0,0],[2,2,2,2,0,0],[2,2,2,2,0,0],[2,2,2,0,0,0],[-1,-1,-1,-1,-1,-1]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[2,2,2,0,0,0],[2,2,2,0,0,0],[2,2,2,2,0,0],[-1,-1,-1,-1,-1,-1]],[[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[2,2,0,0,0,0],[-1,-1,-1,-1,-1,-1]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[-1,-1,-1,-1,-1,-1]],[[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,2,0,0,0,0],[-1,-1,-1,-1,-1,-1]],[[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[2,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0]],[[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,1,1,1,1,1],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0],[2,0,0,0,0,0]]],refused_by:[[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[0,0,0,0,0,0]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[1,1,1,1,1,1],[1,1,1,1,1,1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[1,1,1,1,1,1],[1,1,1,1,1,1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[1,1,1,1,1,1],[1,1,1,1,1,1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[0,0,0,0,0,0]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[0,0,0,0,0,0]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[1,1,1,1,1,1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[1,1,1,1,1,1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[1,1,1,1,1,1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[1,1,1,1,1,1],[1,1,1,1,1,1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]]],marks:[[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32],[32,32,32,32,32,32],[32,32,32,32,32,32],[32,32,32,32,32,32],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32],[32,32,32,32,32,32],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32],[32,32,32,32,32,32],[32,32,32,32,32,32],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32],[32,32,32,32,32,32],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[32,32,32,32,32,32],[32,32,32,32,32,32],[32,32,32,32,32,32],[32,32,32,32,32,32]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]]],undecided:[[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!0,!0,!0,!0,!1,!1],[!0,!0,!0,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!0,!0],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!0,!0,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!0,!0,!0,!0,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!0,!1]],[[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!0,!0],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!0,!0,!1],[!1,!1,!0,!0,!1,!1],[!1,!1,!0,!0,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!0,!0,!1],[!1,!1,!0,!0,!1,!1],[!1,!1,!0,!0,!1,!1]],[[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!0,!0,!1,!1],[!0,!0,!0,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!0,!0,!1,!1],[!1,!1,!0,!0,!1,!1],[!1,!1,!0,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!0,!0,!1,!1],[!1,!1,!0,!1,!1,!1],[!1,!1,!0,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1]],[[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!0,!0,!1,!1]]],heat_disagrees:[[!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0],[!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0],[!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1],[!1,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0],[!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1],[!1,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0],[!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1],[!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0],[!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0],[!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0,!0],[!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1,!1]],heat_allowed_w:[[[21487.6,74320.3],[17385,50793.6],[13052,32761.4],[10824.1,25334.2],[8759.45,19294],[7489.4,15919.6],[6669.61,13864.1],[5971.78,12184.6],[5248.32,10507.5],[3360.15,6413.23],[1362.91,2478.86],[485.444,865.042],[170.232,301.155],[91.4499,161.492],[38.7285,68.3084],[null,null]],[[696.305,4742.78],[629.799,4019.51],[556.545,3321.49],[515.306,2966.98],[473.126,2629.33],[444.367,2412.28],[424.238,2266.25],[405.874,2137.04],[385.357,1996.98],[321.361,1587.21],[218.533,1003.68],[135.494,588.958],[79.8429,335.026],[57.0685,236.114],[34.8045,142.057],[24.3871,98.9131]],[[1920.09,6928.21],[1524.94,5414.99],[1188.08,4162.42],[1031.35,3591.01],[890.105,3082.04],[803.151,2771.51],[746.255,2569.46],[696.945,2395.08],[644.565,2210.56],[497.362,1696.03],[302.086,1022.42],[172.565,581.166],[96.7209,324.798],[67.8382,227.557],[null,null],[null,null]],[[1833.31,6608.64],[1455.63,5164.68],[1134.4,3971.79],[985.177,3428.31],[850.814,2944.58],[768.154,2649.6],[714.091,2457.74],[667.25,2292.19],[617.507,2117.06],[477.785,1628.88],[292.545,990.016],[169.62,571.23],[97.3935,327.059],[69.701,233.809],[null,null],[null,null]],[[2496.11,10392.3],[1982.43,8122.49],[1544.5,6243.64],[1340.76,5386.51],[1157.14,4623.06],[1044.1,4157.26],[970.131,3854.19],[906.029,3592.61],[837.934,3315.84],[646.571,2544.04],[392.712,1533.63],[224.335,871.75],[125.737,487.197],[88.1897,341.336],[52.8919,204.506],[36.8156,142.28]],[[6522.82,14221.5],[5496.42,11658.8],[4515.51,9336.23],[4020.93,8209.1],[3552.11,7166.55],[3251.89,6511.72],[3050.41,6077.75],[2872.48,5698.07],[2679.98,5291.06],[2118.96,4126.52],[1325.9,2533.37],[767.102,1446.46],[428.084,800.826],[297.337,554.546],[174.526,324.573],[119.158,221.318]],[[2406.04,10902.8],[2082.31,8971.9],[1756.58,7211.73],[1585.88,6353.97],[1419.87,5558.49],[1311.32,5057.81],[1237.48,4725.55],[1171.58,4434.56],[1099.55,4122.31],[885.149,3227.08],[570.09,1997.56],[338.9,1154.52],[194.258,650.475],[137.276,456.601],[null,null],[null,null]],[[5213.95,22709.4],[4387.02,18582.8],[3593.13,14828.9],[3191.6,13002.8],[2810.28,11311.5],[2565.78,10248.3],[2401.59,9543.4],[2256.52,8926.55],[2099.52,8265.23],[1641.87,6373.53],[996.529,3793.87],[547.515,2056.86],[283.61,1057.23],[186.446,693.053],[100.294,371.877],[64.2484,237.975]],[[9398.18,43954.4],[7851.94,35723.4],[6385.04,28318.4],[5649.63,24744.5],[4955.34,21451.3],[4512.26,19389.3],[4215.63,18025.8],[3954.18,16835.1],[3671.9,15560.9],[2853.16,11931.1],[1710.04,7021.05],[924.97,3750.95],[470.484,1894.41],[305.674,1227.64],[161.7,647.967],[null,null]],[[23831.9,67891.3],[20931,54456.4],[17906,42722.8],[16276.4,37174.1],[14661.4,32124.1],[13589.1,28992],[12852.2,26933.2],[12189.3,25142.9],[11459.3,23235.1],[9251.88,17841.7],[5917.36,10626.1],[3416.05,5833.34],[1853.06,3070.19],[1251.43,2049.91],[698.356,1132.16],[null,null]],[[21017.9,95604.2],[17442.2,74478.8],[14130.2,57096],[12497.6,49197.2],[10972.6,42177.9],[10007.2,37902.7],[9364.25,35124.2],[8799.58,32728],[8192.03,30194.6],[6440.79,23140.4],[4012.6,13928.8],[2331.8,7909.16],[1320.18,4417.05],[929.465,3093.57],[559.381,1852.65],[389.94,1288.57]],[[1066.37,8921.47],[955.481,7885.99],[835.452,6796.19],[768.835,6204.76],[701.399,5615.52],[655.821,5222.54],[624.113,4951.63],[595.323,4707.38],[563.311,4437.71],[464.505,3617.85],[309.06,2364.98],[186.665,1408.96],[106.577,797.348],[74.4832,555.279],[43.7906,325.366],[29.8265,221.274]],[[812.486,8921.47],[748.097,7885.99],[674.271,6796.19],[631.299,6204.76],[586.25,5615.52],[554.877,5222.54],[532.593,4951.63],[512.025,4707.38],[488.772,4437.71],[414.336,3617.85],[288.396,2364.98],[180.75,1408.96],[105.809,797.348],[74.7033,555.279],[44.3542,325.366],[30.3469,221.274]],[[328.88,1610.51],[308.178,1483.28],[283.567,1337.59],[268.792,1252.88],[252.928,1164.15],[241.648,1102.39],[233.516,1058.54],[225.921,1018.08],[217.227,972.358],[188.613,826.085],[137.265,578.816],[90.0851,367.307],[55.1073,219.314],[39.9387,157.314],[24.6215,95.9859],[null,null]],[[198.779,1055.46],[188.043,976.309],[175.023,884.916],[167.068,831.396],[158.41,775.026],[152.177,735.61],[147.644,707.533],[143.38,681.557],[138.462,652.119],[121.996,557.372],[91.311,395.145],[61.7288,254.186],[38.8363,154.14],[28.6115,111.754],[18.0544,69.3811],[null,null]],[[114.18,688.079],[108.414,632.114],[101.374,568.517],[97.0459,531.776],[92.3122,493.47],[88.8895,466.92],[86.3925,448.124],[84.0371,430.821],[81.3135,411.31],[72.1342,349.213],[54.7799,245.288],[37.7208,157.294],[24.2633,95.9737],[18.1587,70.1894],[11.7623,44.4044],[null,null]],[[471.578,3572.4],[449.226,3108.92],[421.744,2638.33],[404.745,2389.97],[386.061,2147.26],[372.491,1987.95],[362.559,1879.28],[353.165,1782.1],[342.273,1675.68],[305.322,1357.55],[234.425,886.217],[163.369,536.994],[106.307,316.283],[80.1052,228.379],[null,null],[null,null]],[[2002.83,8813.78],[1716.4,7443.67],[1434.51,6133.54],[1289.23,5472.64],[1149.51,4845.96],[1058.99,4444.51],[997.769,4175.05],[943.386,3937.02],[884.213,3679.46],[709.698,2928.4],[457.471,1864.96],[275.257,1112.48],[162.022,651.34],[117.288,470.521],[74.0191,296.338],[53.6652,214.646]],[[1687.5,7417.63],[1443.11,6251.34],[1203.61,5140.74],[1080.57,4582.21],[962.485,4053.65],[886.11,3715.6],[834.519,3488.93],[788.727,3288.85],[738.944,3072.52],[592.375,2442.68],[381.206,1553.38],[229.139,925.854],[134.838,541.993],[97.6245,391.607],[61.6457,246.795],[44.7239,178.883]]],voltage_allowed_w:[[[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[null,null]],[[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93]],[[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[null,null],[null,null]],[[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[null,null],[null,null]],[[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55]],[[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2]],[[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[null,null],[null,null]],[[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9]],[[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[null,null]],[[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[null,null]],[[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55]],[[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55],[1412.93,3147.55]],[[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93]],[[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[null,null]],[[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[null,null]],[[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[null,null]],[[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[null,null],[null,null]],[[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93]],[[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887]]],match_margin_db:[[[47.33,51.6688],[41.7549,46.0938],[36.204,40.5428],[33.2215,37.5602],[30.214,34.5526],[28.1652,32.5037],[26.7231,31.0614],[25.3967,29.7349],[23.8975,28.2354],[19.0368,23.3726],[10.1129,14.428],[.921267,5.05136],[-5.51148,-2.66403],[-5.71976,-3.88822],[-5.71976,-3.88822],[null,null]],[[59.6601,73.1073],[54.085,67.5323],[48.5341,61.9813],[45.5514,58.9986],[42.5437,55.9909],[40.4947,53.9419],[39.0523,52.4995],[37.7256,51.1727],[36.2259,49.673],[31.3616,44.8084],[22.4012,35.8448],[12.8802,26.2949],[3.99777,17.1652],[.00657255,12.4869],[-.829173,10.1807],[-.829173,10.1807]],[[60.0304,68.8473],[54.4553,63.2723],[48.9044,57.7213],[45.9218,54.7387],[42.9141,51.731],[40.8651,49.682],[39.4228,48.2397],[38.0962,46.9131],[36.5966,45.4135],[31.7333,40.5501],[22.7825,31.5986],[13.3506,22.1605],[5.26878,14.0408],[3.69213,12.4444],[null,null],[null,null]],[[47.406,48.9933],[41.831,43.4182],[36.2801,37.8673],[33.2975,34.8847],[30.2899,31.8771],[28.241,29.8282],[26.7988,28.386],[25.4723,27.0594],[23.9729,25.56],[19.1109,20.6975],[10.1738,11.756],[.862332,2.40598],[-6.54673,-5.20528],[-7.81182,-6.55674],[null,null],[null,null]],[[60.0304,67.3419],[54.4553,61.7669],[48.9044,56.2159],[45.9218,53.2333],[42.9141,50.2257],[40.8651,48.1767],[39.4228,46.7344],[38.0962,45.4077],[36.5966,43.9081],[31.7333,39.0447],[22.7825,30.0933],[13.3506,20.6556],[5.26878,12.5383],[3.69213,10.9431],[3.69213,10.9431],[3.69213,10.9431]],[[58.4468,65.7583],[52.8717,60.1833],[47.3208,54.6323],[44.3382,51.6497],[41.3306,48.6421],[39.2816,46.5932],[37.8394,45.1509],[36.5128,43.8243],[35.0133,42.3248],[30.1507,37.4621],[21.207,28.5175],[11.8413,19.1437],[4.36635,11.6261],[3.69213,10.9431],[3.69213,10.9431],[3.69213,10.9431]],[[45.8224,47.4097],[40.2474,41.8346],[34.6965,36.2837],[31.7139,33.3012],[28.7064,30.2936],[26.6576,28.2448],[25.2155,26.8026],[23.8891,25.4762],[22.3899,23.9769],[17.5292,19.1155],[8.60524,10.1852],[-.59157,.934616],[-7.28198,-5.98743],[-7.81182,-6.55674],[null,null],[null,null]],[[56.7112,63.3743],[51.1361,57.7993],[45.5852,52.2484],[42.6026,49.2658],[39.595,46.2582],[37.5461,44.2092],[36.1039,42.767],[34.7773,41.4405],[33.2779,39.941],[28.4156,35.0786],[19.4755,26.1372],[10.1433,16.7933],[2.96447,9.55857],[2.54,9.12694],[2.54,9.12694],[2.54,9.12694]],[[56.3935,61.8817],[50.8185,56.3066],[45.2676,50.7557],[42.285,47.7731],[39.2775,44.7656],[37.2286,42.7168],[35.7865,41.2746],[34.46,39.9481],[32.9608,38.4488],[28.0995,33.5874],[19.1699,24.6565],[9.93561,15.4111],[3.71786,9.15299],[3.69213,9.12694],[3.69213,9.12694],[null,null]],[[69.5537,78.4636],[63.9725,72.8823],[58.4101,67.3198],[55.4176,64.3271],[52.396,61.3053],[50.3344,59.2435],[48.8813,57.7902],[47.5431,56.4518],[46.0281,54.9366],[41.0937,50.001],[31.8703,40.7726],[21.8661,30.7521],[14.7283,23.566],[12.5275,21.3043],[8.26285,16.8645],[null,null]],[[71.4093,77.533],[65.8328,71.9564],[60.2791,66.4027],[57.2941,63.4177],[54.2831,60.4067],[52.2311,58.3546],[50.7863,56.9097],[49.4569,55.5803],[47.9537,54.0771],[43.0736,49.1968],[34.061,40.1832],[24.5282,30.6469],[17.0948,23.2026],[16.1378,22.2333],[14.17,20.2297],[12.0807,18.092]],[[68.3708,76.7811],[62.7948,71.205],[57.242,65.6521],[54.2577,62.6678],[51.2478,59.6578],[49.1967,57.6066],[47.7525,56.1624],[46.4239,54.8337],[44.9217,53.3313],[40.0455,48.4546],[31.0361,39.443],[21.3733,29.7725],[12.1877,20.5597],[8.15766,16.4904],[6.49983,14.7483],[4.93213,13.0701]],[[68.3697,73.2158],[62.7927,67.6387],[57.2381,62.0839],[54.2522,59.098],[51.24,56.0857],[49.1868,54.0324],[47.741,52.5864],[46.4104,51.2557],[44.9057,49.7508],[40.0175,44.862],[30.9583,35.7997],[21.1458,25.9775],[11.571,16.3695],[7.1134,11.8636],[4.57881,9.21726],[2.33219,6.82785]],[[67.9871,74.6146],[62.4102,69.0376],[56.8558,63.4829],[53.8701,60.497],[50.8581,57.4847],[48.8051,55.4315],[47.3594,53.9855],[46.029,52.6549],[44.5244,51.15],[39.637,46.2611],[30.5777,37.1954],[20.731,27.3284],[10.7521,17.284],[4.95148,11.3811],[-.474693,5.65829],[null,null]],[[83.0092,88.9049],[77.424,83.3196],[71.854,77.7493],[68.8548,74.7499],[65.8236,71.7184],[63.7533,69.6478],[62.2927,68.1869],[60.9463,66.8403],[59.4205,65.3141],[54.4337,60.3255],[44.9729,50.8572],[34.0257,39.887],[21.6935,27.4888],[13.7531,19.4615],[3.94957,9.39618],[null,null]],[[81.2348,87.0532],[75.6523,81.4705],[70.0872,75.9051],[67.0924,72.91],[64.0674,69.8846],[62.0026,67.8195],[60.5467,66.3633],[59.2055,65.0217],[57.6864,63.5022],[52.7311,58.5447],[43.3944,49.1993],[32.7627,38.5405],[20.9665,26.6671],[13.2882,18.8885],[2.85379,8.15065],[null,null]],[[51.3914,51.4342],[45.815,45.858],[40.2616,40.3051],[37.2768,37.3207],[34.2662,34.3106],[32.2144,32.2594],[30.7697,30.8152],[29.4405,29.4865],[27.9376,27.9841],[23.0581,23.1077],[14.0405,14.1025],[4.40843,4.50673],[-4.25683,-4.08134],[-7.14174,-6.90261],[null,null],[null,null]],[[86.5625,90.4769],[80.9843,84.8987],[75.4275,79.3419],[72.4398,76.3541],[69.4249,73.3392],[67.3693,71.2836],[65.9213,69.8356],[64.5885,68.5028],[63.0807,66.995],[58.1784,62.0924],[49.0589,52.9724],[39.0552,42.9669],[28.8773,32.7836],[23.4223,27.3213],[19.4573,23.3353],[16.4379,20.2877]],[[80.0703,86.3365],[74.4937,80.7599],[68.9398,75.206],[65.9547,72.2208],[62.9434,69.2095],[60.8911,67.1572],[59.4459,65.712],[58.1162,64.3822],[56.6125,62.8785],[51.7292,57.9949],[42.6877,48.9524],[32.9048,39.1664],[23.1859,29.438],[17.9383,24.1769],[14.3781,20.5794],[12.2402,18.3924]]],largest_power_w:[[1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1362.91,485.444,null,null,null,null],[696.305,629.799,556.545,515.306,473.126,444.367,424.238,405.874,385.357,321.361,218.533,135.494,79.8429,57.0685,null,null],[1920.09,1524.94,1188.08,1031.35,890.105,803.151,746.255,696.945,644.565,497.362,302.086,172.565,96.7209,67.8382,null,null],[1833.31,1455.63,1134.4,985.177,850.814,768.154,714.091,667.25,617.507,477.785,292.545,169.62,null,null,null,null],[2496.11,1982.43,1544.5,1340.76,1157.14,1044.1,970.131,906.029,837.934,646.571,392.712,224.335,125.737,88.1897,52.8919,36.8156],[6522.82,5496.42,4515.51,4020.93,3552.11,3251.89,3050.41,2872.48,2679.98,2118.96,1325.9,767.102,428.084,297.337,174.526,119.158],[2406.04,2082.31,1756.58,1585.88,1419.87,1311.32,1237.48,1171.58,1099.55,885.149,570.09,null,null,null,null,null],[5213.95,4387.02,3593.13,3191.6,2810.28,2565.78,2401.59,2256.52,2099.52,1641.87,996.529,547.515,283.61,186.446,100.294,64.2484],[9398.18,7851.94,6385.04,5649.63,4955.34,4512.26,4215.63,3954.18,3671.9,2853.16,1710.04,924.97,470.484,305.674,161.7,null],[23831.9,20931,17906,16276.4,14661.4,13589.1,12852.2,12189.3,11459.3,9251.88,5917.36,3416.05,1853.06,1251.43,698.356,null],[3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,2331.8,1320.18,929.465,559.381,389.94],[1066.37,955.481,835.452,768.835,701.399,655.821,624.113,595.323,563.311,464.505,309.06,186.665,106.577,74.4832,43.7906,29.8265],[812.486,748.097,674.271,631.299,586.25,554.877,532.593,512.025,488.772,414.336,288.396,180.75,105.809,74.7033,44.3542,30.3469],[328.88,308.178,283.567,268.792,252.928,241.648,233.516,225.921,217.227,188.613,137.265,90.0851,55.1073,39.9387,null,null],[198.779,188.043,175.023,167.068,158.41,152.177,147.644,143.38,138.462,121.996,91.311,61.7288,38.8363,28.6115,18.0544,null],[114.18,108.414,101.374,97.0459,92.3122,88.8895,86.3925,84.0371,81.3135,72.1342,54.7799,37.7208,24.2633,18.1587,11.7623,null],[null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null],[786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,709.698,457.471,275.257,162.022,117.288,74.0191,53.6652],[363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,229.139,134.838,97.6245,61.6457,44.7239]]}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var ke=class extends Event{constructor(e,t,n,a){super("context-request",{bubbles:!0,composed:!0}),this.context=e,this.contextTarget=t,this.callback=n,this.subscribe=a??!1}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 *//**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var Se=class{constructor(e,t,n,a){if(this.subscribe=!1,this.provided=!1,this.value=void 0,this.t=(i,r)=>{this.unsubscribe&&(this.unsubscribe!==r&&(this.provided=!1,this.unsubscribe()),this.subscribe||this.unsubscribe()),this.value=i,this.host.requestUpdate(),this.provided&&!this.subscribe||(this.provided=!0,this.callback&&this.callback(i,r)),this.unsubscribe=r},this.host=e,t.context!==void 0){let i=t;this.context=i.context,this.callback=i.callback,this.subscribe=i.subscribe??!1}else this.context=t,this.callback=n,this.subscribe=a??!1;this.host.addController(this)}hostConnected(){this.dispatchRequest()}hostDisconnected(){this.unsubscribe&&(this.unsubscribe(),this.unsubscribe=void 0)}dispatchRequest(){this.host.dispatchEvent(new ke(this.context,this.host,this.t,this.subscribe))}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var Qt=class{get value(){return this.o}set value(e){this.setValue(e)}setValue(e,t=!1){let n=t||!Object.is(e,this.o);this.o=e,n&&this.updateObservers()}constructor(e){this.subscriptions=new Map,this.updateObservers=()=>{for(let[t,{disposer:n}]of this.subscriptions)t(this.o,n)},e!==void 0&&(this.value=e)}addCallback(e,t,n){if(!n)return void e(this.value);this.subscriptions.has(e)||this.subscriptions.set(e,{disposer:()=>{this.subscriptions.delete(e)},consumerHost:t});let{disposer:a}=this.subscriptions.get(e);e(this.value,a)}clearCallbacks(){this.subscriptions.clear()}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var en=class extends Event{constructor(e,t){super("context-provider",{bubbles:!0,composed:!0}),this.context=e,this.contextTarget=t}},Ge=class extends Qt{constructor(e,t,n){super(t.context!==void 0?t.initialValue:n),this.onContextRequest=a=>{if(a.context!==this.context)return;let i=a.contextTarget??a.composedPath()[0];i!==this.host&&(a.stopPropagation(),this.addCallback(a.callback,i,a.subscribe))},this.onProviderRequest=a=>{if(a.context!==this.context||(a.contextTarget??a.composedPath()[0])===this.host)return;let i=new Set;for(let[r,{consumerHost:l}]of this.subscriptions)i.has(r)||(i.add(r),l.dispatchEvent(new ke(this.context,l,r,!0)));a.stopPropagation()},this.host=e,t.context!==void 0?this.context=t.context:this.context=t,this.attachListeners(),this.host.addController?.(this)}attachListeners(){this.host.addEventListener("context-request",this.onContextRequest),this.host.addEventListener("context-provider",this.onProviderRequest)}hostConnected(){this.host.dispatchEvent(new en(this.context,this.host))}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 *//**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 *//**
 * @license
 * Copyright 2022 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 *//**
 * @license
 * Copyright 2019 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var es=globalThis,ts=es.ShadowRoot&&(es.ShadyCSS===void 0||es.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,tn=Symbol(),rr=new WeakMap,yt=class{constructor(e,t,n){if(this._$cssResult$=!0,n!==tn)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=t}get styleSheet(){let e=this.o,t=this.t;if(ts&&e===void 0){let n=t!==void 0&&t.length===1;n&&(e=rr.get(t)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),n&&rr.set(t,e))}return e}toString(){return this.cssText}},z=s=>new yt(typeof s=="string"?s:s+"",void 0,tn),m=(s,...e)=>{let t=s.length===1?s[0]:e.reduce((n,a,i)=>n+(r=>{if(r._$cssResult$===!0)return r.cssText;if(typeof r=="number")return r;throw Error("Value passed to 'css' function must be a 'css' function result: "+r+". Use 'unsafeCSS' to pass non-literal values, but take care to ensure page security.")})(a)+s[i+1],s[0]);return new yt(t,s,tn)},or=(s,e)=>{if(ts)s.adoptedStyleSheets=e.map(t=>t instanceof CSSStyleSheet?t:t.styleSheet);else for(let t of e){let n=document.createElement("style"),a=es.litNonce;a!==void 0&&n.setAttribute("nonce",a),n.textContent=t.cssText,s.appendChild(n)}},sn=ts?s=>s:s=>s instanceof CSSStyleSheet?(e=>{let t="";for(let n of e.cssRules)t+=n.cssText;return z(t)})(s):s;/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var{is:y1,defineProperty:$1,getOwnPropertyDescriptor:v1,getOwnPropertyNames:k1,getOwnPropertySymbols:S1,getPrototypeOf:E1}=Object,ss=globalThis,lr=ss.trustedTypes,j1=lr?lr.emptyScript:"",A1=ss.reactiveElementPolyfillSupport,$t=(s,e)=>s,nn={toAttribute(s,e){switch(e){case Boolean:s=s?j1:null;break;case Object:case Array:s=s==null?s:JSON.stringify(s)}return s},fromAttribute(s,e){let t=s;switch(e){case Boolean:t=s!==null;break;case Number:t=s===null?null:Number(s);break;case Object:case Array:try{t=JSON.parse(s)}catch{t=null}}return t}},cr=(s,e)=>!y1(s,e),dr={attribute:!0,type:String,converter:nn,reflect:!1,useDefault:!1,hasChanged:cr};Symbol.metadata??=Symbol("metadata"),ss.litPropertyMetadata??=new WeakMap;var pe=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,t=dr){if(t.state&&(t.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((t=Object.create(t)).wrapped=!0),this.elementProperties.set(e,t),!t.noAccessor){let n=Symbol(),a=this.getPropertyDescriptor(e,n,t);a!==void 0&&$1(this.prototype,e,a)}}static getPropertyDescriptor(e,t,n){let{get:a,set:i}=v1(this.prototype,e)??{get(){return this[t]},set(r){this[t]=r}};return{get:a,set(r){let l=a?.call(this);i?.call(this,r),this.requestUpdate(e,l,n)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??dr}static _$Ei(){if(this.hasOwnProperty($t("elementProperties")))return;let e=E1(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty($t("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty($t("properties"))){let t=this.properties,n=[...k1(t),...S1(t)];for(let a of n)this.createProperty(a,t[a])}let e=this[Symbol.metadata];if(e!==null){let t=litPropertyMetadata.get(e);if(t!==void 0)for(let[n,a]of t)this.elementProperties.set(n,a)}this._$Eh=new Map;for(let[t,n]of this.elementProperties){let a=this._$Eu(t,n);a!==void 0&&this._$Eh.set(a,t)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let t=[];if(Array.isArray(e)){let n=new Set(e.flat(1/0).reverse());for(let a of n)t.unshift(sn(a))}else e!==void 0&&t.push(sn(e));return t}static _$Eu(e,t){let n=t.attribute;return n===!1?void 0:typeof n=="string"?n:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,t=this.constructor.elementProperties;for(let n of t.keys())this.hasOwnProperty(n)&&(e.set(n,this[n]),delete this[n]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return or(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,t,n){this._$AK(e,n)}_$ET(e,t){let n=this.constructor.elementProperties.get(e),a=this.constructor._$Eu(e,n);if(a!==void 0&&n.reflect===!0){let i=(n.converter?.toAttribute!==void 0?n.converter:nn).toAttribute(t,n.type);this._$Em=e,i==null?this.removeAttribute(a):this.setAttribute(a,i),this._$Em=null}}_$AK(e,t){let n=this.constructor,a=n._$Eh.get(e);if(a!==void 0&&this._$Em!==a){let i=n.getPropertyOptions(a),r=typeof i.converter=="function"?{fromAttribute:i.converter}:i.converter?.fromAttribute!==void 0?i.converter:nn;this._$Em=a;let l=r.fromAttribute(t,i.type);this[a]=l??this._$Ej?.get(a)??l,this._$Em=null}}requestUpdate(e,t,n,a=!1,i){if(e!==void 0){let r=this.constructor;if(a===!1&&(i=this[e]),n??=r.getPropertyOptions(e),!((n.hasChanged??cr)(i,t)||n.useDefault&&n.reflect&&i===this._$Ej?.get(e)&&!this.hasAttribute(r._$Eu(e,n))))return;this.C(e,t,n)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,t,{useDefault:n,reflect:a,wrapped:i},r){n&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,r??t??this[e]),i!==!0||r!==void 0)||(this._$AL.has(e)||(this.hasUpdated||n||(t=void 0),this._$AL.set(e,t)),a===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(t){Promise.reject(t)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[a,i]of this._$Ep)this[a]=i;this._$Ep=void 0}let n=this.constructor.elementProperties;if(n.size>0)for(let[a,i]of n){let{wrapped:r}=i,l=this[a];r!==!0||this._$AL.has(a)||l===void 0||this.C(a,void 0,i,l)}}let e=!1,t=this._$AL;try{e=this.shouldUpdate(t),e?(this.willUpdate(t),this._$EO?.forEach(n=>n.hostUpdate?.()),this.update(t)):this._$EM()}catch(n){throw e=!1,this._$EM(),n}e&&this._$AE(t)}willUpdate(e){}_$AE(e){this._$EO?.forEach(t=>t.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(t=>this._$ET(t,this[t])),this._$EM()}updated(e){}firstUpdated(e){}};pe.elementStyles=[],pe.shadowRootOptions={mode:"open"},pe[$t("elementProperties")]=new Map,pe[$t("finalized")]=new Map,A1?.({ReactiveElement:pe}),(ss.reactiveElementVersions??=[]).push("2.1.2");/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var rn=globalThis,fr=s=>s,ns=rn.trustedTypes,ur=ns?ns.createPolicy("lit-html",{createHTML:s=>s}):void 0,on="$lit$",ge=`lit$${Math.random().toFixed(9).slice(2)}$`,ln="?"+ge,O1=`<${ln}>`,Ne=document,kt=()=>Ne.createComment(""),St=s=>s===null||typeof s!="object"&&typeof s!="function",dn=Array.isArray,_r=s=>dn(s)||typeof s?.[Symbol.iterator]=="function",an=`[ 	
\f\r]`,vt=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,hr=/-->/g,mr=/>/g,Me=RegExp(`>|${an}(?:([^\\s"'>=/]+)(${an}*=${an}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),pr=/'/g,gr=/"/g,wr=/^(?:script|style|textarea|title)$/i,cn=s=>(e,...t)=>({_$litType$:s,strings:e,values:t}),o=cn(1),P=cn(2),$m=cn(3),Pe=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),br=new WeakMap,Le=Ne.createTreeWalker(Ne,129);function xr(s,e){if(!dn(s)||!s.hasOwnProperty("raw"))throw Error("invalid template strings array");return ur!==void 0?ur.createHTML(e):e}var yr=(s,e)=>{let t=s.length-1,n=[],a,i=e===2?"<svg>":e===3?"<math>":"",r=vt;for(let l=0;l<t;l++){let c=s[l],h,b,_=-1,$=0;for(;$<c.length&&(r.lastIndex=$,b=r.exec(c),b!==null);)$=r.lastIndex,r===vt?b[1]==="!--"?r=hr:b[1]!==void 0?r=mr:b[2]!==void 0?(wr.test(b[2])&&(a=RegExp("</"+b[2],"g")),r=Me):b[3]!==void 0&&(r=Me):r===Me?b[0]===">"?(r=a??vt,_=-1):b[1]===void 0?_=-2:(_=r.lastIndex-b[2].length,h=b[1],r=b[3]===void 0?Me:b[3]==='"'?gr:pr):r===gr||r===pr?r=Me:r===hr||r===mr?r=vt:(r=Me,a=void 0);let k=r===Me&&s[l+1].startsWith("/>")?" ":"";i+=r===vt?c+O1:_>=0?(n.push(h),c.slice(0,_)+on+c.slice(_)+ge+k):c+ge+(_===-2?l:k)}return[xr(s,i+(s[t]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),n]},Et=class s{constructor({strings:e,_$litType$:t},n){let a;this.parts=[];let i=0,r=0,l=e.length-1,c=this.parts,[h,b]=yr(e,t);if(this.el=s.createElement(h,n),Le.currentNode=this.el.content,t===2||t===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(a=Le.nextNode())!==null&&c.length<l;){if(a.nodeType===1){if(a.hasAttributes())for(let _ of a.getAttributeNames())if(_.endsWith(on)){let $=b[r++],k=a.getAttribute(_).split(ge),C=/([.?@])?(.*)/.exec($);c.push({type:1,index:i,name:C[2],strings:k,ctor:C[1]==="."?is:C[1]==="?"?rs:C[1]==="@"?os:We}),a.removeAttribute(_)}else _.startsWith(ge)&&(c.push({type:6,index:i}),a.removeAttribute(_));if(wr.test(a.tagName)){let _=a.textContent.split(ge),$=_.length-1;if($>0){a.textContent=ns?ns.emptyScript:"";for(let k=0;k<$;k++)a.append(_[k],kt()),Le.nextNode(),c.push({type:2,index:++i});a.append(_[$],kt())}}}else if(a.nodeType===8)if(a.data===ln)c.push({type:2,index:i});else{let _=-1;for(;(_=a.data.indexOf(ge,_+1))!==-1;)c.push({type:7,index:i}),_+=ge.length-1}i++}}static createElement(e,t){let n=Ne.createElement("template");return n.innerHTML=e,n}};function qe(s,e,t=s,n){if(e===Pe)return e;let a=n!==void 0?t._$Co?.[n]:t._$Cl,i=St(e)?void 0:e._$litDirective$;return a?.constructor!==i&&(a?._$AO?.(!1),i===void 0?a=void 0:(a=new i(s),a._$AT(s,t,n)),n!==void 0?(t._$Co??=[])[n]=a:t._$Cl=a),a!==void 0&&(e=qe(s,a._$AS(s,e.values),a,n)),e}var as=class{constructor(e,t){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=t}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:t},parts:n}=this._$AD,a=(e?.creationScope??Ne).importNode(t,!0);Le.currentNode=a;let i=Le.nextNode(),r=0,l=0,c=n[0];for(;c!==void 0;){if(r===c.index){let h;c.type===2?h=new Ve(i,i.nextSibling,this,e):c.type===1?h=new c.ctor(i,c.name,c.strings,this,e):c.type===6&&(h=new ls(i,this,e)),this._$AV.push(h),c=n[++l]}r!==c?.index&&(i=Le.nextNode(),r++)}return Le.currentNode=Ne,a}p(e){let t=0;for(let n of this._$AV)n!==void 0&&(n.strings!==void 0?(n._$AI(e,n,t),t+=n.strings.length-2):n._$AI(e[t])),t++}},Ve=class s{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,t,n,a){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=t,this._$AM=n,this.options=a,this._$Cv=a?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,t=this._$AM;return t!==void 0&&e?.nodeType===11&&(e=t.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,t=this){e=qe(this,e,t),St(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==Pe&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):_r(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&St(this._$AH)?this._$AA.nextSibling.data=e:this.T(Ne.createTextNode(e)),this._$AH=e}$(e){let{values:t,_$litType$:n}=e,a=typeof n=="number"?this._$AC(e):(n.el===void 0&&(n.el=Et.createElement(xr(n.h,n.h[0]),this.options)),n);if(this._$AH?._$AD===a)this._$AH.p(t);else{let i=new as(a,this),r=i.u(this.options);i.p(t),this.T(r),this._$AH=i}}_$AC(e){let t=br.get(e.strings);return t===void 0&&br.set(e.strings,t=new Et(e)),t}k(e){dn(this._$AH)||(this._$AH=[],this._$AR());let t=this._$AH,n,a=0;for(let i of e)a===t.length?t.push(n=new s(this.O(kt()),this.O(kt()),this,this.options)):n=t[a],n._$AI(i),a++;a<t.length&&(this._$AR(n&&n._$AB.nextSibling,a),t.length=a)}_$AR(e=this._$AA.nextSibling,t){for(this._$AP?.(!1,!0,t);e!==this._$AB;){let n=fr(e).nextSibling;fr(e).remove(),e=n}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},We=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,t,n,a,i){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=t,this._$AM=a,this.options=i,n.length>2||n[0]!==""||n[1]!==""?(this._$AH=Array(n.length-1).fill(new String),this.strings=n):this._$AH=u}_$AI(e,t=this,n,a){let i=this.strings,r=!1;if(i===void 0)e=qe(this,e,t,0),r=!St(e)||e!==this._$AH&&e!==Pe,r&&(this._$AH=e);else{let l=e,c,h;for(e=i[0],c=0;c<i.length-1;c++)h=qe(this,l[n+c],t,c),h===Pe&&(h=this._$AH[c]),r||=!St(h)||h!==this._$AH[c],h===u?e=u:e!==u&&(e+=(h??"")+i[c+1]),this._$AH[c]=h}r&&!a&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},is=class extends We{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},rs=class extends We{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},os=class extends We{constructor(e,t,n,a,i){super(e,t,n,a,i),this.type=5}_$AI(e,t=this){if((e=qe(this,e,t,0)??u)===Pe)return;let n=this._$AH,a=e===u&&n!==u||e.capture!==n.capture||e.once!==n.once||e.passive!==n.passive,i=e!==u&&(n===u||a);a&&this.element.removeEventListener(this.name,this,n),i&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},ls=class{constructor(e,t,n){this.element=e,this.type=6,this._$AN=void 0,this._$AM=t,this.options=n}get _$AU(){return this._$AM._$AU}_$AI(e){qe(this,e)}},$r={M:on,P:ge,A:ln,C:1,L:yr,R:as,D:_r,V:qe,I:Ve,H:We,N:rs,U:os,B:is,F:ls},T1=rn.litHtmlPolyfillSupport;T1?.(Et,Ve),(rn.litHtmlVersions??=[]).push("3.3.3");var Ke=(s,e,t)=>{let n=t?.renderBefore??e,a=n._$litPart$;if(a===void 0){let i=t?.renderBefore??null;n._$litPart$=a=new Ve(e.insertBefore(kt(),i),i,void 0,t??{})}return a._$AI(s),a};/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var fn=globalThis,oe=class extends pe{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let t=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=Ke(t,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Pe}};oe._$litElement$=!0,oe.finalized=!0,fn.litElementHydrateSupport?.({LitElement:oe});var C1=fn.litElementPolyfillSupport;C1?.({LitElement:oe});(fn.litElementVersions??=[]).push("4.2.2");/**
 * @license
 * Copyright 2022 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 *//**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var ds=s=>(...e)=>({_$litDirective$:s,values:e}),Ye=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,t,n){this._$Ct=e,this._$AM=t,this._$Ci=n}_$AS(e,t){return this.update(e,t)}update(e,t){return this.render(...t)}};/**
 * @license
 * Copyright 2020 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var{I:z1}=$r,vr=s=>s;var un=(s,e)=>e===void 0?s?._$litType$!==void 0:s?._$litType$===e,Sr=s=>s?._$litType$?.h!=null;var kr=()=>document.createComment(""),hn=(s,e,t)=>{let n=s._$AA.parentNode,a=e===void 0?s._$AB:e._$AA;if(t===void 0){let i=n.insertBefore(kr(),a),r=n.insertBefore(kr(),a);t=new z1(i,r,s,s.options)}else{let i=t._$AB.nextSibling,r=t._$AM,l=r!==s;if(l){let c;t._$AQ?.(s),t._$AM=s,t._$AP!==void 0&&(c=s._$AU)!==r._$AU&&t._$AP(c)}if(i!==a||l){let c=t._$AA;for(;c!==i;){let h=vr(c).nextSibling;vr(n).insertBefore(c,a),c=h}}}return t};var R1={},jt=(s,e=R1)=>s._$AH=e,mn=s=>s._$AH;var Er=s=>{s._$AR()};/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var jr=s=>Sr(s)?s._$litType$.h:s.strings,pn=ds(class extends Ye{constructor(s){super(s),this.et=new WeakMap}render(s){return[s]}update(s,[e]){let t=un(this.it)?jr(this.it):null,n=un(e)?jr(e):null;if(t!==null&&(n===null||t!==n)){let a=mn(s).pop(),i=this.et.get(t);if(i===void 0){let r=document.createDocumentFragment();i=Ke(u,r),i.setConnected(!1),this.et.set(t,i)}jt(i,[a]),hn(i,void 0,a)}if(n!==null){if(t===null||t!==n){let a=this.et.get(n);if(a!==void 0){let i=mn(a).pop();Er(s),hn(s,void 0,i),jt(s,[i])}}this.it=e}else this.it=void 0;return this.render(e)}});/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var Ar=ds(class extends Ye{constructor(){super(...arguments),this.key=u}render(s,e){return this.key=s,e}update(s,[e,t]){return e!==this.key&&(jt(s),this.key=e),t}});var d=void 0,f=s=>({attribute:!1}),w=s=>({state:!0}),p=(s,e)=>class extends(e??oe){static properties=s};var H=(s,e)=>s.querySelector(e);function M(s,e,t){let n=document.createElement("a");n.href=URL.createObjectURL(new Blob([t],{type:e})),n.download=s,n.click(),URL.revokeObjectURL(n.href)}var Xe=(s,e)=>M(s,"application/json",JSON.stringify({made_by:`Jointwise ${D.version}`,...e},null,1));var M1=(s,e)=>JSON.stringify(s)===JSON.stringify(e);function L1(s){return Array.isArray(s)?s.join(","):String(s)}function Or(s,e){return e.type==="number"?s===""||!Number.isFinite(Number(s))?void 0:Number(s):e.type==="boolean"?{true:!0,false:!1}[s]:e.type==="choice"?e.choices.includes(s)?s:void 0:s}function N1(s,e){if(e.type!=="list")return Or(s,e);let t=s===""?[]:s.split(",").map(n=>Or(n,e.items));return t.includes(void 0)||t.length<e.least?void 0:t}function Ee(s,e){return Object.keys(e).filter(n=>!M1(s[n],e[n])).map(n=>`${n}=${encodeURIComponent(L1(s[n])).replaceAll("%2C",",")}`).join("&")}function cs(s,e,t){let n={...t},a=[];for(let[i,r]of new URLSearchParams(s.replaceAll("+","%2B"))){let l=Object.hasOwn(e,i)?N1(r,e[i]):void 0;l===void 0?a.push(r===""?i:`${i}=${r}`):n[i]=l}return{state:n,unknown:a}}var Ie=(s,e,t)=>[`view=${s}`,Ee(e,t)].filter(Boolean).join("&");function Ze(s,e,t){let n=s.split("&").filter(a=>!a.startsWith("view="));return cs(n.join("&"),e,t)}function Je(s,e){let t=new URLSearchParams(s).get("view");return e.includes(t)?t:e[0]}var je=s=>s.length>0&&{text:`This link holds what the page does not know: ${s.join(", ")}. Everything else is restored.`};var g=m`
  :host { display: block; }
  :host([hidden]) { display: none; }
  *, *::before, *::after { box-sizing: border-box; }
  :focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; border-radius: 4px; }
  h2, h3, h4, p, ul, dl, dd, figure { margin: 0; }
  h3 { font-size: 1rem; }
  h4 { font-size: 0.9rem; }
  a { color: var(--accent); }
  button, input, select { font: inherit; color: inherit; font-variant-numeric: tabular-nums; }
  button {
    min-height: var(--target); min-width: var(--target); padding: 0 14px;
    background: var(--card); border: 1px solid var(--edge); border-radius: var(--round); cursor: pointer;
  }
  button:hover { border-color: var(--accent); }
  button[aria-pressed='true'], button[aria-expanded='true'], button[aria-checked='true'] {
    background: var(--accent); border-color: var(--accent); color: var(--accent-ink);
  }
  input:not([type='checkbox'], [type='radio'], [type='range']), select {
    min-height: var(--target); padding: 0 8px; width: 100%; min-width: 0;
    background: var(--card); border: 1px solid var(--edge); border-radius: var(--round); font-size: 0.9rem;
  }
  select { padding-right: 2px; }
  input[type='checkbox'], input[type='range'] { accent-color: var(--accent); }
  [aria-invalid='true'] { border-color: var(--alarm) !important; box-shadow: 0 0 0 1px var(--alarm); }
  .formula math { width: max-content; margin: 0; }
  math { font-family: math, 'STIX Two Math', 'Cambria Math', 'Latin Modern Math', 'DejaVu Math TeX Gyre', serif; }
  .quiet { color: var(--soft); font-size: 0.85rem; }
  .error { color: var(--alarm); font-size: 0.85rem; }
  .unseen {
    position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap;
  }
  .plain { border-collapse: collapse; width: 100%; font-size: 0.85rem; }
  .plain :is(th, td) {
    padding: 5px 8px 5px 0; text-align: left; vertical-align: top; border-bottom: 1px solid var(--line);
  }
  .plain :is(th, td).number { text-align: right; white-space: nowrap; }
  .plain th { font-weight: 600; }
  .plain thead th { color: var(--soft); font-weight: 500; }
  @media print {
    .plain :is(th, td) { padding-top: 1px; padding-bottom: 1px; }
    .more:not([open]) { display: none; }
  }
  var { font-style: italic; font-family: 'STIX Two Math', 'Latin Modern Math', Cambria, 'DejaVu Serif', serif; }
  .kind {
    display: inline-block; padding: 0 6px; border: 1px solid var(--line); border-radius: 99px;
    color: var(--soft); font-size: 0.75rem; white-space: nowrap;
  }
`;var At=Symbol("vocabulary"),v=class extends oe{#e=new Se(this,{context:At});get vocabulary(){return this.#e.value}};var gn=[[1e9,"G"],[1e6,"M"],[1e3,"k"],[1,""],[.001,"m"],[1e-6,"µ"],[1e-9,"n"],[1e-12,"p"]],P1=new Set(["Hz","m","Ω","W","V","s","A","F","H","J","V/m","Ω/m","Pa","S/m"]),q1=99.95;function S(s){let e=Math.abs(s);return`${s<0?"−":"+"}${e.toFixed(e<q1?1:0)}`}function y(s,e=4){if(s===0)return"0";let t=Math.abs(s);if(t>=1e6||t<1e-4){let[n,a]=s.toExponential(e-1).split("e");return`${Tr(String(Number(n)))}·10${I1(a)}`}return Tr(String(t>=10**e?Math.round(s):Number(s.toPrecision(e))))}function E(s,e,t=4){if(typeof s=="string")return s;if(e==="1"||e==="")return y(s,t);if(!P1.has(e)||s===0)return`${y(s,t)} ${e}`;let n=Math.abs(s),[a,i]=gn.find(([r])=>n>=r*.99999)??gn[gn.length-1];return`${y(s/a,t)} ${i}${e}`}var O=s=>E(s,"Hz",6);function T(s){return s===0?"receive":s>=1e4?`${y(s/1e3)} kW`:`${y(s)} W`}function W1(s){return s===0?"Rx":s>=1e3?`${y(s/1e3,3)}k`:y(s,4)}function Ot(s){return s>=995e3?">1M":W1(He(s,2))}function He(s,e){let t=10**(Math.floor(Math.log10(s))-e+1);return Number((Math.floor(s/t)*t).toPrecision(e))}var Tr=s=>s.replace("-","−"),I1=s=>[...s.replace("+","")].map(e=>e==="-"?"⁻":"⁰¹²³⁴⁵⁶⁷⁸⁹"[e]).join("");var H1={families:({id:s,name:e})=>({id:s,name:e}),cables:({id:s,name:e,dielectric:t,outer_diameter_m:n})=>({id:s,name:e,dielectric:t,diameter_m:n.value}),bands:({id:s,name:e,regions:t})=>({id:s,name:e,regions:Object.keys(t).sort()}),modes:s=>s},Cr={families:"interfaces",cables:"cables",bands:"bands",modes:"modes"};function B1(s,e,t){let n=new Map(e.map(a=>[a.id,a]));for(let a of t)for(let i of a[Cr[s]]??[]){let{name:r,...l}=H1[s](i);n.set(i.id,{...l,name:`${r} (pack ${a.name})`})}return[...n.values()]}function zr(s,e){let t=e.map(({text:h})=>JSON.parse(h)),{conditions:n,cable_dielectrics:a,installations:i,noise_environments:r}=s,l=t.findLast(({default_powers_w:h})=>h?.length)?.default_powers_w,c=Object.keys(Cr).map(h=>[h,B1(h,s[h],t)]);return{...Object.fromEntries(c),conditions:n,cable_dielectrics:a,installations:i,noise_environments:r,powers_w:l??s.requests.matrix.powers_w.default}}var U1="matrix",Rr=s=>Object.assign({},...s),F1=s=>Object.fromEntries(Object.entries(s).map(([e,t])=>[e,t.default])),fs=class{isPacked;views;lists;fields;first;words;constructor(e,t,n){this.isPacked=n.length>0,this.views=t.map(({id:a})=>a),this.lists=zr(e,n),this.fields=Rr(t.map(({fields:a})=>a?.(e,this.lists))),this.first=Object.fromEntries(Object.entries(this.fields).map(([a,i])=>[a,F1(i)])),this.words=Rr(t.map(({words:a})=>a?.(this.lists)))}wordsOf(e){return this.words[e]??this.words[e.split(".")[1]]}labelOf(e){return this.wordsOf(e)?.label}fieldOf(e){let[t,n=U1]=e.split(".").reverse();return this.fields[n]?.[t]}valueOf(e,t){return e?.[t.split(".")[1]]??this.fieldOf(t).default}factorOf(e){return this.wordsOf(e).factor??1}unitOf(e){return this.wordsOf(e).unit??this.fieldOf(e).unit??""}shown(e,t){return Number((t/this.factorOf(e)).toPrecision(12))}rangeOf(e){let t=this.fieldOf(e),{min:n,max:a}=t.type==="list"?t.items:t,[i,r]=[n,a].map(c=>y(this.shown(e,c))),l=this.unitOf(e);return`${i} to ${r}${l?` ${l}`:""}`}optionsOf(e){let{options:t,entries:n}=this.wordsOf(e);return n?n.map(({id:a,name:i})=>[a,i]):Object.entries(t??{})}spoken(e,t){if(t===null)return"not given";if(e.endsWith("added_sealing"))return t?"yes":"no";let{named:n,options:a}=this.wordsOf(e);if(n)return t.map(r=>n.find(l=>l.id===r)?.name??r).join(", ");let i=r=>y(this.shown(e,r));return Array.isArray(t)?`${t.map(i).join(", ")} ${this.unitOf(e)}`:typeof t=="number"&&!a?`${i(t)} ${this.unitOf(e)}`.trim():this.optionsOf(e).find(([r])=>r===String(t))?.[1]??String(t)}};function Qe(s,{lists:e}){let t=new Map(e.bands.map(n=>[n.id,n]));return s.bands.filter(n=>t.get(n)?.regions.includes(String(s.region))??!0)}function x(s,e,t){s.dispatchEvent(new CustomEvent(e,{detail:t,bubbles:!0,composed:!0}))}var Mr=(s,e)=>Object.fromEntries(Object.entries(e).filter(([,t])=>!s.includes(t))),Be=s=>Mr([null,void 0],s),be=s=>Mr([null,void 0,""],s);var Lr=({requests:{choose:s}})=>({choose:s}),Nr=(s,e)=>({...Be(s),bands:Qe(s,e)});var bn=class extends p({cautions:f(d),heading:{type:String}}){static styles=[g,m`
      section {
        padding: 12px 16px; border-left: 4px solid var(--alarm); background: var(--alarm-wash); border-radius: 4px;
      }
      h2 { margin-bottom: 4px; font-size: 1rem; }
      ul { padding-left: 1.1em; font-size: 0.9rem; }
      @media print { ul, h2 { font-size: 7.5pt; } section { padding: 1mm 3mm; } }
      li + li { margin-top: 3px; }
    `];constructor(){super(),this.cautions=[],this.heading="Cautions"}render(){return o`<section>
      <h2>${this.heading}</h2>
      <ul>
        ${this.cautions.map(e=>o`<li>${e}</li>`)}
      </ul>
    </section>`}};customElements.define("jw-cautions",bn);var Pr="unpacking",qr="starting Python",Wr="loading numpy",et="ready",Ir=s=>({kind:"start",names:s}),Hr=(s,e)=>({kind:"part",name:s,contents:e}),Br=(s,e,t,n)=>({kind:"ask",number:s,operation:e,body:t,packs:n});var Ur=s=>({kind:"unable",reason:s}),Fr=s=>({kind:"died",reason:s});var D1="take over",Dr=()=>({kind:D1});var X=class{status="initial";result;answered;error;#e;#t;#s=0;#n;#a;constructor(e,t){this.#e=e,this.#t=t,e.addController(this)}hostDisconnected(){this.cancel()}async ask(e){this.cancel();let t=++this.#s;this.#n=new AbortController,this.status="pending",this.#e.requestUpdate();try{let n=await this.#t(e,{signal:this.#n.signal});if(t!==this.#s)return;Object.assign(this,{status:"complete",result:n,answered:e,error:void 0})}catch(n){if(t!==this.#s)return;Object.assign(this,{status:"error",error:n})}this.#n=void 0,this.#e.requestUpdate(),this.#i()}askNext(e){if(this.#n===void 0)return this.ask(e);this.#a=e}cancel(){this.#s++,this.#a=void 0,this.#n?.abort(),this.#n=void 0,this.status==="pending"&&(this.status=this.result===void 0?"initial":"complete")}#i(){let e=this.#a;this.#a=void 0,e!==void 0&&this.ask(e)}};var G1={[Pr]:10,[qr]:30,[Wr]:60},_n=class extends p({status:{type:String,reflect:!0},stage:{type:String}}){static styles=[g,m`
      :host { height: 3px; }
      div { height: 100%; overflow: hidden; }
      p {
        position: fixed; bottom: 12px; left: 12px; padding: 4px 12px; font-size: 0.85rem; background: var(--card);
        border: 1px solid var(--line); border-radius: var(--round); box-shadow: 0 4px 20px #0003;
      }
      i { display: block; height: 100%; width: 30%; background: var(--accent); opacity: 0; }
      :host([status='pending']) i { opacity: 1; }
      :host([status='pending']) .moving { animation: pass 1.1s 0.15s infinite ease-in-out backwards; }
      @keyframes pass { from { translate: -100% 0; } to { translate: 340% 0; } }
      @media (prefers-reduced-motion: reduce) { :host([status='pending']) .moving { animation: none; width: 100%; } }
      @media print { :host { display: none; } }
    `];constructor(){super(),this.status="initial",this.stage="",this._reached=""}willUpdate(){this.stage?this._reached=this.stage:this.status!=="pending"&&(this._reached="")}render(){let e=G1[this._reached],t=e===void 0?o`<i class="moving"></i>`:o`<i style="width: ${e}%"></i>`,n=this._reached?o`<p role="status">Starting the core: ${this._reached}</p>`:u;return o`<div>${t}</div>${n}`}};customElements.define("jw-progress",_n);var Y=class extends p({transport:f(d),stage:{type:String}},v){static view="";constructor(){super(),this.stage="",this._begun=!1,this._travelled=()=>this._follow(location.hash.slice(1))}connectedCallback(){super.connectedCallback(),window.addEventListener("popstate",this._travelled),this._begun||this._begin(),this._begun=!0,this._travelled()}disconnectedCallback(){super.disconnectedCallback(),window.removeEventListener("popstate",this._travelled),this._asked=void 0}updated(){this.transport!==void 0&&this._ask()}_follow(e){Je(e,this.vocabulary.views)===this.constructor.view&&this._restore(e)}_begin(){}_restore(e){}_ask(){}_enquiry(e){return new X(this,(t,n)=>this.transport.ask(e,t,n))}_progress({status:e}){return o`<jw-progress status=${e} stage=${this.stage===et?"":this.stage}></jw-progress>`}_notice(e){e&&x(this,"jw-notice",e)}};async function Z(s=location.href){try{return await navigator.clipboard.writeText(s),{text:"Link copied. It holds everything you set.",link:""}}catch{return{text:"Copy this link; it holds everything you set.",link:s}}}var J=s=>s?.field?.split(/[[.]/)[0]??"";function le({field:s="",message:e},t){return t&&s&&e.startsWith(s)?t+e.slice(s.length):e}var de=m`
  .fields {
    display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: start;
  }
  .wide { grid-column: 1 / -1; }
  details { border-top: 1px solid var(--line); }
  summary { cursor: pointer; min-height: var(--target); align-content: center; font-weight: 600; font-size: 0.92rem; }
  summary small { font-weight: 400; color: var(--soft); }
  @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
`,ce=m`
  main { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; padding: 10px 8px 40px; align-items: start; }
  .bar { display: flex; flex-wrap: wrap; gap: 6px; align-items: end; }
  .bar button { font-size: 0.85rem; padding: 0 10px; }
  .trouble {
    padding: 10px 14px; background: var(--alarm-wash); border: 1px solid var(--alarm); border-radius: var(--round);
  }
  .waiting { min-height: 60vh; }
  .answer { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; }
  jw-progress { position: sticky; top: 0; z-index: 5; }
  @media (min-width: 700px) { main { padding: 14px 16px 48px; } }
  @media (min-width: 1180px) {
    main { grid-template-columns: minmax(330px, 25%) minmax(0, 1fr); }
    .bar, .trouble { grid-column: 1 / -1; }
  }
  @media print {
    main { display: block; padding: 0; }
    .answer { gap: 2mm; }
    .noprint, .bar { display: none; }
  }
`;var j=m`
  section { min-width: 0; }
  .panel { padding: 12px; background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
  h2 { font-size: 1.05rem; margin-bottom: 8px; }
  h2 small { font-weight: 400; color: var(--soft); font-size: 0.8rem; }
  .legend { margin-top: 8px; }
  @media print {
    :host { gap: 2mm; }
    .panel { padding: 1mm 2mm; break-inside: avoid; }
    h2 { font-size: 9pt; margin-bottom: 1mm; }
  }
`,tt=m`
  .pick {
    position: relative; display: grid; place-items: center; min-height: var(--target); padding: 0 10px;
    font-size: 0.85rem; border: 1px solid var(--edge); border-radius: var(--round); background: var(--card);
    cursor: pointer;
  }
  .pick:hover { border-color: var(--accent); }
  .pick:focus-within { outline: 3px solid var(--accent); outline-offset: 2px; }
  .pick input[type='file'] { position: absolute; inset: 0; width: 100%; height: 100%; opacity: 0; cursor: pointer; }
`,Gr=m`
  main { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; padding: 10px 8px 40px; }
  .trouble {
    display: flex; gap: 12px; align-items: center; padding: 4px 4px 4px 14px;
    background: var(--alarm-wash); border: 1px solid var(--alarm); border-radius: var(--round);
  }
  .onpaper { display: none; }
  .waiting { min-height: 60vh; }
  jw-line-answer, .waiting { order: -1; }
  .wide { order: -2; }
  jw-progress { position: sticky; top: 0; z-index: 5; }
  @media (min-width: 700px) { main { padding: 14px 16px 48px; } }
  @media (min-width: 1180px) {
    main { grid-template-columns: minmax(400px, 30%) minmax(0, 1fr); grid-template-rows: auto; }
    .wide { grid-column: 1 / -1; }
    jw-line-editor { grid-column: 1; grid-row: span 2; }
    jw-line-answer, jw-line-results, .waiting { grid-column: 2; order: 0; }
  }
  @media (min-width: 1280px) and (max-width: 1800px) {
    :host([beside]) main { grid-template-columns: minmax(0, 1fr); }
    :host([beside]) :is(jw-line-editor, jw-line-answer, jw-line-results, .waiting) { grid-column: 1; grid-row: auto; }
    :host([beside]) jw-line-answer { order: -1; }
  }
  @media print {
    main, :host([beside]) main {
      padding: 0; gap: 2mm; grid-template-columns: 78mm minmax(0, 1fr); grid-template-rows: auto;
    }
    jw-line-editor { grid-column: 1; }
    jw-line-answer { grid-column: 2; order: 0; }
    jw-line-results, .wide { grid-column: 1 / -1; }
    .trouble { display: none; }
    h2.onpaper { display: block; font-size: 11pt; margin: 0; }
  }
`;var us=(s,e)=>s.includes(e)?s:[...s,e].sort((t,n)=>t-n),Vr=(s,e)=>s.reduce((t,n)=>Math.abs(n-e)<Math.abs(t-e)?n:t);var V1=["use","bands","frequencies_hz","installation","cable","port","largest_diameter_m","plan","power_w"],K1=s=>s.low_hz===s.high_hz,Y1=(s,e,t)=>s.indexOf(e)<s.indexOf(t)?t:e;function X1(s,e,t){return s.port_binds?t.choices.find(({family:n})=>n===e.port):s}function Z1(s,{columns:e}){let t=e.reduce((n,a)=>a.high_hz>n.high_hz?a:n);return e.find(({name:n})=>n===s.binding_column)??t}function J1(s,e,{cables:t,installations:n,vibrations:a}){let i=Object.entries(s).filter(([c])=>!V1.includes(c)),r=t.find(({id:c})=>c===s.cable),{least_vibration:l}=n.find(({id:c})=>c===s.installation);return{...Object.fromEntries(i),exposure:e.weather.asked,vibration:Y1(a,s.vibration,l),...r&&{cable_dielectric:r.dielectric,cable_diameter_m:r.diameter_m}}}function Kr(s,e,t,n,a){let i=X1(s,e,t),r=Z1(i,t),l=K1(r)?{frequency_hz:r.high_hz,frequencies_hz:[r.high_hz]}:{band:r.id,bands:a.bands.includes(r.id)?a.bands:[...a.bands,r.id]},c={power_w:t.power_w,powers_w:us(a.powers_w,t.power_w)};return Ee({...a,...J1(e,s,n),...l,...c,family:i.family},a)}var Q1=s=>/[",\r\n]/.test(s)?`"${s.replaceAll('"','""')}"`:s,ec=s=>typeof s=="string"&&/^[=+\-@]/.test(s)?`'${s}`:String(s??"");function Ae(s,e){return[s.map(([n])=>n),...e.map(n=>s.map(([,a])=>Q1(ec(a(n)))))].map(n=>`${n.join(",")}\r
`).join("")}var tc=[["family",s=>s.name],["passes",s=>s.passes],["rank",s=>s.rank],["margin_db",s=>s.margin_db],["margin_high_db",s=>s.margin_high_db],["undecided",s=>s.undecided],["set_by",s=>s.port_binds?"port":s.binding],["on",s=>s.port_binds?null:s.binding_column],["loss_db",s=>s.loss_db],["diameter_m",s=>s.diameter_m],["coupling",s=>s.coupling],["torque_nm",s=>s.torque_nm],["needs_adapter",s=>s.needs_adapter],["best_in_something",s=>s.best_in_something],["matings_needed",s=>s.wear.needed],["matings_good_for",s=>s.wear.good_for],["wears_out_after_years",s=>s.wear.runs_out_after_years],["stands",s=>s.weather.stands],["stands_sealed",s=>s.weather.stands_sealed],["from_pack",s=>s.pack],["missed",s=>s.rejections.map(({sentence:e})=>e).join(" ")]],Yr=s=>Ae(tc,s.choices);var N=class extends p({name:{type:String},value:f(d),error:{type:String}},v){static styles=[g,m`
      :host { min-width: 0; }
      label, legend { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; padding: 0; }
      .under {
        display: block; min-height: 1.35em; margin-top: 2px; font-size: 0.75rem; line-height: 1.35; color: var(--soft);
      }
      .under.error { color: var(--alarm); font-weight: 600; }
    `];constructor(){super(),this.error=""}get label(){return this.vocabulary.labelOf(this.name)}under(e){let{problem:t}=this;return o`<span class=${t?"under error":"under"} id="under" role=${t?"alert":"note"}
      >${t||e}</span>`}get problem(){return this.error&&this.vocabulary.factorOf(this.name)!==1?`Allowed: ${this.vocabulary.rangeOf(this.name)}.`:this.error}get invalid(){return this.problem?"true":"false"}get field(){return this.vocabulary.fieldOf(this.name)}change(e,t=!1){let n={changes:{[this.name]:e},live:t};this.dispatchEvent(new CustomEvent("jw-change",{detail:n,bubbles:!0,composed:!0}))}};var wn=class extends p({hint:{type:String}},N){constructor(){super(),this.hint=""}render(){return o`<label for=${this.name}>${this.label}</label>
      <select id=${this.name} aria-invalid=${this.invalid} aria-describedby="under" @change=${this._chosen}>
        ${this._options.map(([e,t])=>o`<option value=${e} .selected=${e===String(this.value??"")}>${t}</option>`)}
      </select>
      ${this.under(this.hint)}`}get _options(){let e=this.vocabulary.optionsOf(this.name),t=String(this.value);return e.some(([n])=>n===t)?e:[...e,[t,t]]}_chosen(e){let{value:t}=e.target;t===""?this.change(null):this.change(this.field.type==="number"?Number(t):t)}};customElements.define("jw-choice-field",wn);var xn=class extends N{static styles=[...N.styles,m`
      input {
        width: 100%; min-height: var(--target); padding: 8px; border: 1px dashed var(--edge);
        border-radius: var(--round); background: var(--card); font-size: 0.85rem;
      }
      ::file-selector-button {
        font: inherit; padding: 4px 10px; color: var(--ink); background: var(--sunk);
        border: 1px solid var(--edge); border-radius: 6px;
      }
    `];render(){return o`<label for=${this.name}>${this.label}</label>
      <input id=${this.name} type="file" accept=".s1p,.s2p,.ts,.txt" aria-invalid=${this.invalid}
        aria-describedby="under" @change=${this._picked}>
      ${this.under(this.value?this._held():"pick a file or drop it here")}`}_held(){return`${this.value.split(`
`).filter(t=>/^\s*[\d.+-]/.test(t)).length} rows of numbers are in the line; another file takes their place`}async _picked(e){let[t]=e.target.files;t&&this.change(await t.text())}};customElements.define("jw-file-field",xn);var yn=1e3,$n=class extends p({_unread:w(d)},N){static styles=[...N.styles,m`
      .row { display: flex; gap: 10px; align-items: center; }
      input[type='range'] { flex: 1 1 70px; min-width: 60px; height: var(--target); margin: 0; }
      .row input[type='number'] { flex: 0 1 5.2rem; min-width: 4rem; padding-right: 2px; }
      .row input[type='number']:only-child { flex: 1 1 auto; }
    `];constructor(){super(),this._unread=!1}get problem(){return this._unread?`Enter a number from ${this.vocabulary.rangeOf(this.name)}.`:super.problem}render(){let e=this.value===null?"":this.vocabulary.shown(this.name,this.value);return o`<label for=${this.name}>${this.label}</label>
      <div class="row">
        ${this.vocabulary.wordsOf(this.name).slider?this._slider():u}
        <input id=${this.name} type="number" inputmode="decimal" step="any" .value=${String(e)}
          aria-invalid=${this.invalid} aria-describedby="under" placeholder=${this.field.nullable?"not given":""}
          @change=${this._typed}>
      </div>
      ${this.under(this.vocabulary.rangeOf(this.name))}`}_slider(){return o`<input type="range" min="0" max=${yn} step="1" .value=${String(this._position())}
      aria-label="${this.label}, slider" aria-valuetext=${String(this.vocabulary.shown(this.name,this.value))}
      @input=${e=>this._slid(e,!0)} @change=${e=>this._slid(e,!1)}>`}get _logarithmic(){return this.vocabulary.wordsOf(this.name).slider==="logarithmic"}get _range(){return this.field}_position(){let{min:e,max:t}=this._range,n=Math.min(Math.max(this.value,e),t),a=this._logarithmic?Math.log(n/e)/Math.log(t/e):(n-e)/(t-e);return Math.round(a*yn)}_slid(e,t){let{min:n,max:a}=this._range,{step:i=1}=this.vocabulary.wordsOf(this.name),r=Number(e.target.value)/yn,l=this._logarithmic?n*(a/n)**r:n+(a-n)*r;this._unread=!1,this.change(Number((Math.round(l/i)*i).toPrecision(6)),t)}_typed(e){let{value:t,validity:n}=e.target,a=t===""&&!n.badInput;this._unread=t===""&&!(a&&this.field.nullable),!this._unread&&this.change(a?null:Number((Number(t)*this.vocabulary.factorOf(this.name)).toPrecision(12)))}};customElements.define("jw-number-field",$n);var vn=class extends N{static styles=[...N.styles,m`
      label { display: flex; gap: 10px; align-items: center; min-height: var(--target); margin: 1.2rem 0 0; }
      input { width: 22px; height: 22px; margin: 0; }
    `];render(){return o`<label>
        <input id=${this.name} type="checkbox" .checked=${this.value} aria-invalid=${this.invalid}
          @change=${e=>this.change(e.target.checked)}>
        ${this.label}
      </label>
      ${this.under("")}`}};customElements.define("jw-switch-field",vn);var kn=class extends N{render(){return o`<label for=${this.name}>${this.label}</label>
      <input id=${this.name} type="text" autocomplete="off" maxlength=${this.field.longest} .value=${this.value}
        aria-invalid=${this.invalid} aria-describedby="under"
        @change=${e=>this.change(e.target.value.trim())}>
      ${this.under("")}`}};customElements.define("jw-text-field",kn);function q(s,e,t,n=""){let{type:a}=s.fieldOf(e),{options:i,entries:r}=s.wordsOf(e);return e.endsWith(".touchstone")?o`<jw-file-field name=${e} .value=${t} .error=${n}></jw-file-field>`:a==="boolean"?o`<jw-switch-field name=${e} .value=${t} .error=${n}></jw-switch-field>`:a==="choice"||i||r?o`<jw-choice-field name=${e} .value=${t} .error=${n}></jw-choice-field>`:a==="number"?o`<jw-number-field name=${e} .value=${t} .error=${n}></jw-number-field>`:o`<jw-text-field name=${e} .value=${t} .error=${n}></jw-text-field>`}var W=s=>Object.fromEntries(Object.entries(s.detail.changes).map(([e,t])=>[e.split(".").at(-1),t]));var Sn=class extends p({_unread:w(d),zero:{type:String}},N){constructor(){super(),this._unread="",this.zero=""}get problem(){return this._unread?`“${this._unread}” is not a number.`:super.problem}render(){let e=this.value.map(n=>n===0&&this.zero?this.zero:String(this.vocabulary.shown(this.name,n))),t=this.zero?`; “${this.zero}” is 0`:"";return o`<label for=${this.name}>${this.label}</label>
      <input id=${this.name} type="text" autocomplete="off" spellcheck="false" .value=${e.join("  ")}
        aria-invalid=${this.invalid} aria-describedby="under" @change=${this._typed}>
      ${this.under(`${this.vocabulary.rangeOf(this.name)} each, spaces between${t}`)}`}_typed(e){let t=e.target.value.split(/[\s,;]+/).filter(Boolean),n=t.map(r=>r===this.zero?0:Number(r)),a=n.findIndex(Number.isNaN);if(this._unread=a===-1?"":t[a],a!==-1)return;let i=n.map(r=>Number((r*this.vocabulary.factorOf(this.name)).toPrecision(12)));this.change([...new Set(i)].sort((r,l)=>r-l))}};customElements.define("jw-list-field",Sn);var En=class extends p({choices:f(d),sets:f(d),of:{type:String},hint:{type:String}},N){static styles=[...N.styles,m`
      fieldset { margin: 0; padding: 0; border: 0; min-width: 0; }
      div { display: flex; flex-wrap: wrap; gap: 4px; }
      button { padding: 0 10px; }
      .set { border-style: dashed; }
    `];constructor(){super(),this.of="",this.hint=""}render(){return o`<fieldset id=${this.name} aria-describedby="under">
      <legend>${this.label}${this.of}</legend>
      <div>
        ${this.choices.filter(({hidden:e})=>!e).map(({id:e,name:t})=>o`<button value=${e} aria-pressed=${this._chosen.includes(e)}
                @click=${this._toggle}>${t}</button>`)}
        ${this.sets.map(e=>o`<button class="set" aria-pressed=${e.value===null?this.value===null:u}
            @click=${()=>this.change(e.value)}>${e.words}</button>`)}
      </div>
      ${this.under(this.hint)}
    </fieldset>`}get _chosen(){return this.value??[]}_toggle(e){let t=e.currentTarget.value,n=new Set(this._chosen);n.delete(t)||n.add(t),n.size>0?this.change(this.choices.map(a=>a.id).filter(a=>n.has(a))):this.sets.some(a=>a.value===null)&&this.change(null)}};customElements.define("jw-toggles-field",En);var jn=[["carries","What it carries",["use","power_w","mode","vswr","bands","frequencies_hz"]],["sits","Where it sits",["installation","exposure","added_sealing","vibration","ambient_temperature_c","solar_irradiance_w_per_m2","altitude_m"]],["used","How it is used",["matings_per_year","service_life_years","condition"]],["meets","What it meets",["cable","cable_dielectric","cable_diameter_m","port","largest_diameter_m","system_impedance_ohm","return_loss_asked_db","region"]]],sc=[{words:"none: spot frequencies only",value:[]}],nc="(min-width: 1180px)",ac=(s,e)=>JSON.stringify(s)===JSON.stringify(e),An=class extends p({state:f(d),refusal:f(d),_open:w(d)},v){static styles=[g,de,m`:host { padding: 12px; background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
    .plan { max-width: 420px; }`];constructor(){super(),this._open=new Set(matchMedia(nc).matches?jn.map(([e])=>e):["carries"])}willUpdate(e){if(!e.has("refusal")||!this.refusal)return;let t=jn.find(([,,n])=>n.includes(J(this.refusal)));t&&(this._open=new Set([...this._open,t[0]]))}render(){return o`<div @jw-change=${this._changed}>
      <h2 class="unseen">Demands</h2>
      <div class="plan">${this._field("plan")}</div>
      ${jn.map(e=>this._group(e))}
    </div>`}_group([e,t,n]){let a=this._open.has(e),r=n.filter(l=>!ac(this.state[l],this.vocabulary.first.choose[l])).map(l=>this.vocabulary.spoken(`choose.${l}`,this.state[l])).join(" · ");return o`<details data-group=${e} ?open=${a} @toggle=${l=>this._toggled(e,l.target.open)}>
      <summary>${t} ${r&&!a?o`<small>${r}</small>`:u}</summary>
      <div class="fields">${a?n.map(l=>this._field(l)):u}</div>
    </details>`}_field(e){let{state:t}=this;if(e.startsWith("cable_")&&t.cable!==null)return u;if(e==="power_w"&&t.use==="receive")return u;let n=`choose.${e}`,{refusal:a}=this,r=a&&J(a)===e?le(a,this.vocabulary.labelOf(n)):"";if(e==="bands"){let l=this.vocabulary.lists.bands.map(c=>({...c,hidden:!c.regions.includes(String(t.region))}));return o`<jw-toggles-field class="wide" name=${n} .choices=${l} .sets=${sc}
        .value=${t.bands} .error=${r}></jw-toggles-field>`}return e==="frequencies_hz"?o`<jw-list-field class="wide" name=${n} .value=${t.frequencies_hz}
        .error=${r}></jw-list-field>`:q(this.vocabulary,n,t[e],r)}_toggled(e,t){if(this._open.has(e)===t)return;let n=new Set(this._open);n.delete(e)||n.add(e),this._open=n}_changed(e){e.stopPropagation(),x(this,"jw-choose-change",{changes:W(e),live:e.detail.live})}};customElements.define("jw-choose-form",An);var Oe=[{from:-1/0,light:["#6e3f0e","#ffffff"],dark:["#6a3d10","#fff4e4"],print:["#c08a3c","#000000"]},{from:-20,light:["#bf8031","#1a1005"],dark:["#935f1d","#fffaf2"],print:["#dcb273","#000000"]},{from:-10,light:["#e6bd76","#1f1607"],dark:["#bb9148","#160f04"],print:["#efd6a9","#000000"]},{from:-3,light:["#f8e8c8","#2a2010"],dark:["#d9c79f","#1c160a"],print:["#faf0dc","#000000"]},{from:0,light:["#e4eff8","#10202e"],dark:["#c2d2df","#0c161f"],print:["#eef5fa","#000000"]},{from:3,light:["#b0d2ee","#0c1c2b"],dark:["#86adcf","#07121c"],print:["#d2e5f4","#000000"]},{from:10,light:["#69a6d8","#061523"],dark:["#3f76a8","#ffffff"],print:["#a8cdea","#000000"]},{from:20,light:["#1f5690","#ffffff"],dark:["#1f4c7b","#f0f7ff"],print:["#7bb0dc","#000000"]}];function R(s){return Oe.findLastIndex(e=>s>=e.from)}function Xr(s){let e=Oe[s].from,t=Oe[s+1]?.from,n=a=>`${a>0?"+":a<0?"−":""}${Math.abs(a)}`;return e===-1/0?`below ${n(t)}`:t===void 0?`${n(e)} and above`:`${n(e)} to ${n(t)}`}var L=Oe.map((s,e)=>`[data-step="${e}"]{background-color:var(--step-${e});color:var(--step-${e}-ink)}`).join(`
`);var G=s=>s?o` <span class="pack">from pack ${s}</span>`:u,On=s=>s?o` <span class="pack sign" title="From pack ${s}">◆<span class="unseen"> from pack ${s}</span></span>`:u;function hs(s,e=[]){let[t,n]=s.split(".");return n===void 0?void 0:e.find(({id:a})=>a===t)?.name}var I=m`
  .pack {
    display: inline-block; max-width: 100%; padding: 0 7px; border: 1px dashed var(--accent); border-radius: 99px;
    color: var(--accent); font-size: 0.75rem; font-weight: 500; overflow-wrap: anywhere;
  }
  .pack.sign { padding: 0 2px; border: 0; font-size: 0.8em; }
`;var Zr={indoor:"indoors",sheltered:"outdoors, sheltered",exposed:"outdoors, exposed",immersed:"under water"},ic=.01;function Tn(s,e){if(s.rank===null)return"";let t=e.filter(({rank:n})=>n===s.rank).length>1;return`${s.rank}${t?"=":""}`}var Jr=s=>s.margin_db===null?"refused":`${S(s.margin_db)} dB`;function Qr(s){return s.margin_db===null?"":[s.margin_high_db===null?"":`up to ${S(s.margin_high_db)} dB`,s.undecided?"undecided":""].filter(Boolean).join(", ")}function eo(s){return s.margin_db===null?"":s.port_binds?"set by the port’s own joint":`${s.binding} on ${s.binding_column}`}var to=s=>`${s<ic?y(s,2):s.toFixed(3)} dB`,so=s=>`${y(s*1e3,3)} mm`;function no({coupling:s,torque_nm:e,by_hand:t}){return t?`${s}, by hand`:e>0?`${s}, ${y(e,3)} N·m`:s}function ao({needed:s,good_for:e,runs_out_after_years:t}){let n=t===null?"never opened":`runs out after ${y(t,3)} years`;return`${y(s,4)} needed, good for ${y(e,5)}; ${n}`}function io({stands:s,stands_sealed:e}){let t=`stands ${Zr[s]}`;return s===e?t:`${t}; sealed: ${Zr[e]}`}var ro=s=>[s.best_in_something?"best in something":"",s.needs_adapter?"needs an adapter to the port":""].filter(Boolean);function oo(s,e){let t=e.choices.find(({family:r})=>r===s);if(!t)return"";if(!t.passes){let{length:r}=t.rejections;return`Your plan, ${t.name}, misses ${r===1?"one demand":`${r} demands`}.`}if(t.rank===1)return`Your plan, ${t.name}, meets every demand, and none has more room.`;let n=e.choices.find(({rank:r})=>r===1),a=(n.margin_db-t.margin_db).toFixed(1),i=`rank ${Tn(t,e.choices)} of ${e.passing.length}`;return`Your plan, ${t.name}, meets every demand: ${i}, ${a} dB less room than ${n.name}.`}var rc=["Rank","Family","Smallest margin","Loss","Size","Coupling","Matings","Weather"],Cn=class extends p({choices:f(d),all:f(d),plan:{type:String},heading:{type:String},linkOf:f(d)}){static styles=[g,I,z(L),m`
      table { width: 100%; border-collapse: collapse; font-size: 0.85rem; }
      th, td { padding: 4px 10px 4px 0; text-align: left; border-bottom: 1px solid var(--line); }
      thead th { color: var(--soft); font-weight: 500; }
      tbody th a {
        display: inline-grid; align-items: center; min-height: var(--target); min-width: var(--target); font-size: 1rem;
        font-weight: 700;
      }
      .chip {
        display: inline-block; min-width: 4.6em; padding: 4px 6px; border-radius: 6px; text-align: center;
        font-weight: 700; white-space: nowrap;
      }
      .chip.none { background: var(--refused); color: var(--refused-ink); font-weight: 500; }
      .number { white-space: nowrap; }
      .rank { font-size: 1.05rem; font-weight: 700; }
      small { display: block; color: var(--soft); line-height: 1.3; }
      .mark {
        display: inline-block; white-space: nowrap; margin: 0 4px 2px 0; padding: 0 7px; border: 1px solid var(--edge);
        border-radius: 99px; font-size: 0.75rem; font-weight: 500; color: inherit;
      }
      .mark.plan { background: var(--accent-wash); border-color: var(--accent); }
      ul { padding-left: 1.1em; }
      .missed td, .missed th { vertical-align: top; }
      @media (max-width: 760px) {
        thead { position: absolute; clip-path: inset(50%); }
        table, tbody { display: block; }
        tr {
          display: grid; grid-template-columns: 2.2em 1fr; align-items: center; padding: 8px 0;
          border-bottom: 1px solid var(--edge);
        }
        td, tbody th { padding: 2px 0; border: 0; }
        td:not(.rank), .missed th { grid-column: 1 / -1; }
        td[data-head]::before { content: attr(data-head) ': '; color: var(--soft); }
        .margin { display: flex; flex-wrap: wrap; gap: 0 10px; align-items: center; }
        tbody th { display: flex; flex-wrap: wrap; gap: 0 12px; align-items: center; }
        .margin::before { content: none !important; }
      }
      @media print {
        tr { break-inside: avoid; }
        tbody th a { min-height: 0; color: inherit; text-decoration: none; }
        th, td { padding: 1px 6px 1px 0; }
      }
    `];render(){return this.choices.length>0&&this.choices.every(({passes:e})=>!e)?this._missed():this._passing()}_passing(){return o`<table role="table" aria-label=${this.heading}>
      <thead role="rowgroup"><tr role="row">${rc.map(e=>o`<th role="columnheader" scope="col">${e}</th>`)}</tr></thead>
      <tbody role="rowgroup">
        ${this.choices.map(e=>o`<tr role="row" data-family=${e.family}>
            <td role="cell" class="rank"><span class="unseen">Rank</span> ${Tn(e,this.all)}</td>
            ${this._name(e)} ${this._margin(e)}
            <td role="cell" class="number" data-head="Loss">${to(e.loss_db)}</td>
            <td role="cell" class="number" data-head="Size">${so(e.diameter_m)}</td>
            <td role="cell" data-head="Coupling">${no(e)}</td>
            <td role="cell" data-head="Matings">${ao(e.wear)}</td>
            <td role="cell" data-head="Weather">${io(e.weather)}</td>
          </tr>`)}
      </tbody>
    </table>`}_missed(){let e=["Family","Smallest margin","Demands missed"];return o`<table role="table" class="missed" aria-label=${this.heading}>
      <thead role="rowgroup"><tr role="row">${e.map(t=>o`<th role="columnheader" scope="col">${t}</th>`)}</tr></thead>
      <tbody role="rowgroup">
        ${this.choices.map(t=>o`<tr role="row" data-family=${t.family}>
            ${this._name(t)} ${this._margin(t)}
            <td role="cell" ><ul>${t.rejections.map(({name:n,sentence:a})=>o`<li><b>${n}.</b> ${a}</li>`)}</ul></td>
          </tr>`)}
      </tbody>
    </table>`}_name(e){let t=ro(e);return o`<th role="rowheader" scope="row"><a href="#${this.linkOf(e)}"
      aria-label="${e.name}: open its derivation">${e.name}</a>
      <div>${e.family===this.plan?o`<span class="mark plan">your plan</span>`:u}${t.map(n=>o`<span class="mark">${n}</span>`)}${G(e.pack)}</div></th>`}_margin(e){let t=e.margin_db===null?u:R(e.margin_db);return o`<td role="cell" class="margin" data-head="Margin"><span
      class=${e.margin_db===null?"chip none":"chip"} data-step=${t}>${Jr(e)}</span>
      <small>${Qr(e)}</small><small>${eo(e)}</small></td>`}};customElements.define("jw-choose-table",Cn);var zn=class extends p({result:f(d),answered:f(d),outdated:{type:String}},v){static styles=[g,j,m`
      #verdict { font-size: 1.1rem; font-weight: 600; line-height: 1.35; }
      #plan { font-weight: 600; margin-top: 6px; }
      .rule { margin-top: 4px; }
      .outdated, .doubts {
        padding: 8px 12px; margin-top: 8px; background: var(--alarm-wash); border: 1px solid var(--alarm);
        border-radius: var(--round);
      }
      h3 { margin-top: 10px; }
      ul { padding-left: 1.1em; }
      .ways { display: grid; gap: 10px; padding: 4px 0 0; list-style: none; }
      .ways li { display: flex; flex-wrap: wrap; gap: 4px 12px; align-items: center; min-height: var(--target); }
      .ways button { font-size: 0.85rem; }
      @media print {
        button { display: none; }
        #verdict { font-size: 11pt; }
        .ways { gap: 0; }
        .ways li { min-height: 0; }
      }
    `];render(){let{result:e,answered:t}=this,n=e.choices.find(({family:a})=>a===t.plan)?.rejections??[];return o`<section class="panel">
      <div role="status">
        <p id="verdict">${e.verdict}</p>
        ${t.plan?o`<p id="plan">${oo(t.plan,e)}</p>`:u}
      </div>
      ${n.length>0?o`<ul class="misses">${n.map(({name:a,sentence:i})=>o`<li>${a}: ${i}</li>`)}</ul>`:u}
      <p class="quiet rule">${e.rule}</p>
      ${this.outdated?o`<p class="outdated" role="alert">${this.outdated}</p>`:u}
      ${this._doubts()} ${this._ways()}
    </section>`}_doubts(){let{port_doubts:e}=this.result;return e.length===0?u:o`<div class="doubts"><p>What speaks against the port:</p><ul>${e.map(t=>o`<li>${t}</li>`)}</ul></div>`}_ways(){let{relaxations:e}=this.result;return e.length===0?u:o`<h3>What would let a family pass</h3>
      <ul class="ways">${e.map(t=>this._way(t))}</ul>`}_way({demand:e,sentence:t,field:n,value:a}){return o`<li data-demand=${e}>
      <span>${t}</span>
      ${n?o`<button ?disabled=${this.outdated!==""}
            @click=${()=>x(this,"jw-choose-change",{changes:{[n]:a},live:!1})}>
            Set ${this._changeWords(n,a)}
          </button>`:u}
    </li>`}_changeWords(e,t){let n=`choose.${e}`;return`${this.vocabulary.labelOf(n).toLowerCase()}: ${this.vocabulary.spoken(n,t)}`}};customElements.define("jw-choose-verdict",zn);var Tt=class s extends p({_state:w(d)},Y){static view="choose";static styles=[g,j,ce,m`
      .onpaper { display: none; }
      @media print {
        .onpaper { display: block; font-size: 7.5pt; }
        #passing, #missed { break-inside: auto; }
        h2 small { display: none; }
      }
    `];constructor(){super(),this._choose=this._enquiry("choose")}_begin(){this._state=this._first}get _first(){return this.vocabulary.first.choose}render(){let{error:e,result:t}=this._choose;return o`${this._progress(this._choose)}
      <main @jw-choose-change=${({detail:n})=>this._change(n.changes,n.live)}>
        <div class="bar" role="group" aria-label="Take along">
          <button @click=${async()=>this._notice(await Z())}>Copy link</button>
          <button ?disabled=${!t} @click=${()=>M("jointwise-choose.csv","text/csv",Yr(t))}
            >CSV</button>
          <button @click=${()=>window.print()}>Print</button>
          <button @click=${()=>this._change(this._first)}>Reset</button>
        </div>
        ${this._trouble()}
        <jw-choose-form class="noprint" .state=${this._state} .refusal=${e}></jw-choose-form>
        ${t?this._answer():o`<p class="waiting quiet">${e?e.message:"The core is at work…"}</p>`}
      </main>`}_answer(){let{answered:e,result:t}=this._choose,n=t.choices.filter(({passes:i})=>!i),a=t.choices.filter(({passes:i})=>i);return o`<div class="answer">
      <jw-choose-verdict .result=${t} .answered=${e} .outdated=${this._outdated}></jw-choose-verdict>
      <p class="onpaper">${this._demands(e)}</p>
      ${a.length>0?this._panel("passing","Families that meet every demand",a):u}
      ${n.length>0?this._panel("missed","Families that miss a demand",n):u}
      <jw-cautions .cautions=${t.cautions}></jw-cautions>
    </div>`}_panel(e,t,n){let{answered:a,result:i}=this._choose,{fields:r,first:l,lists:c}=this.vocabulary,h={...c,vibrations:r.choose.vibration.choices},b=_=>Kr(_,a,i,h,l.matrix);return o`<section class="panel" id=${e}>
      <h2>${t} <small>a tap on a family opens its derivation in the matrix</small></h2>
      <jw-choose-table .choices=${n} .all=${i.choices} .plan=${a.plan??""} .heading=${t}
        .linkOf=${b}></jw-choose-table>
      ${e==="passing"?o`<p class="quiet legend">Equal ranks are ties (=). “Best in something”: no other family that passes is
          at least as good in margin, loss, size and torque, and better in one. Loss is that of the mated pair at the
          highest frequency${a.port?", with the port’s own joint":""}.</p>`:u}
    </section>`}get _outdated(){let{error:e}=this._choose;return e?`Out of date, this is the answer from before the last change. ${e.message}`:""}_trouble(){let{error:e}=this._choose;return!e||J(e)in this.vocabulary.fields.choose?u:o`<p class="trouble" role="alert">${e.message} <button
      @click=${()=>this._ask(!0)}>Try again</button></p>`}_demands(e){return Object.entries(e).filter(([,t])=>!Array.isArray(t)||t.length>0).map(([t,n])=>`${this.vocabulary.labelOf(`choose.${t}`)}: ${this.vocabulary.spoken(`choose.${t}`,n)}`).join(" · ")}_ask(e=!1){let t=Nr(this._state,this.vocabulary),n=JSON.stringify(t);(e||n!==this._asked)&&this._choose.askNext(t),this._asked=n}_change(e,t=!1){if(this._state={...this._state,...e},t)return;let n=Ie(s.view,this._state,this._first);n!==location.hash.slice(1)&&history.pushState(null,"",`#${n}`)}_restore(e){let t=Ze(e,this.vocabulary.fields.choose,this._first);this._state=t.state,this._notice(je(t.unknown))}};customElements.define("jw-choose-view",Tt);var st=(s,e={})=>Object.fromEntries(Object.entries(s).map(([t,n])=>[t,t in e?{...n,type:"choice",choices:e[t].map(({id:a})=>a)}:n])),se=(s,e)=>({"":s,...Object.fromEntries(e.map(({id:t,name:n})=>[t,n]))});var lo=({bands:s,cables:e,families:t,installations:n})=>({"choose.use":{label:"The joint is for",options:{transmit:"transmitting",receive:"receiving only"}},"choose.power_w":{label:"Power, peak envelope"},"choose.bands":{label:"Bands it must carry",named:s},"choose.installation":{label:"Put up",entries:n},"choose.cable":{label:"Cable in use",options:se("not given",e)},"choose.port":{label:"Port that can’t be changed",options:se("none",t)},"choose.largest_diameter_m":{label:"Room for the body",factor:.001,unit:"mm"},"choose.plan":{label:"Check my plan",options:se("no plan yet",t)}});var co={id:Tt.view,label:"Choose",fields:Lr,words:lo,element:({transport:s,stage:e})=>o`<jw-choose-view class="view" .transport=${s} .stage=${e}></jw-choose-view>`};var oc={cable:"CableRun",joint:"Joint",part:"Part",measured:"MeasuredPart",load_vswr:"GivenVswr",load_impedance:"GivenImpedance",load_table:"ImpedanceTable",load_measured:"MeasuredLoad",point:"ImpedancePoint",receiver:"Receiver",preamplifier:"Preamplifier"},lc=["elements","load","receiver","explain"],Ct=s=>Object.fromEntries(Object.entries(s).filter(([e])=>!lc.includes(e)));function ms({requests:s,parts:e},{bands:t,cables:n,conditions:a,families:i,modes:r,noise_environments:l}){let c={cable:{cable:n},joint:{family:i,adapter_to:i,condition:a},receiver:{environment:l},station:{mode:r,band:t}},h={station:Ct(s.line)};for(let[b,_]of Object.entries(oc))h[b]=e[_];return Object.fromEntries(Object.entries(h).map(([b,_])=>[b,st(_,c[b])]))}var dc={family:"n",cable:"rg_213",length_m:10,band:"20m",exposure:"exposed"};function fo(s,e){let{joint:t,cable:n}=ms(s,e),a={...Ct(s.requests.fitout),of:{type:"choice",choices:["line","joint"],default:"line",nullable:!1},shown:{type:"number",min:1,max:120,default:1,nullable:!1},family:t.family,adapter_to:t.adapter_to,name:t.name,cable:{...n.cable,nullable:!0},length_m:n.length_m};for(let[i,r]of Object.entries(dc))a[i]={...a[i],default:r};return{fitout:a}}var uo={name:"Field day",request:{elements:[{kind:"joint",family:"uhf"},{kind:"cable",cable:"rg_58",length_m:3},{kind:"joint",family:"uhf"},{kind:"part",loss_db:.1,vswr:1.1,power_limit_w:400,voltage_limit_v:600,name:"Arrester"},{kind:"joint",family:"uhf",adapter_to:"n"},{kind:"cable",cable:"rg_213",length_m:28},{kind:"joint",family:"n",exposure:"exposed"}],load:{kind:"vswr",vswr:2},power_w:100,mode:"ssb",band:"20m"}};var nt=12,ps=60,Ue={lines:[uo],current:0},ne=s=>s.lines[s.current];var fe=class{#e;#t;constructor(e,t){this.#e=e,this.#t=t}recalled(e,t){let{key:n,blocked:a,spoilt:i}=this.#e,r;try{r=e().getItem(n)}catch{return{problem:a}}if(r===null)return{problem:""};try{return{document:this.#t(JSON.parse(r),t),problem:""}}catch{return cc(e(),n,r),{spoilt:r,problem:i}}}remember(e,t){let{key:n,blocked:a,full:i}=this.#e,r;try{r=e()}catch{return a}try{return r.setItem(n,JSON.stringify(t)),""}catch{return i}}};function cc(s,e,t){try{s.removeItem(e),s.setItem(`${e}-set-aside`,t)}catch{}}function B(s,e,t){let n=JSON.stringify(e)??"left out",a=n.length>60?`${n.slice(0,60)}…`:n;throw new RangeError(`${s} is ${a}; allowed: ${t}.`)}var fc=s=>typeof s=="object"&&s!==null&&!Array.isArray(s);function V(s,e){return fc(e)||B(s,e,"a JSON object"),e}function Q(s,e,t,n,a){return(!Array.isArray(e)||e.length<t||e.length>n)&&B(s,e,`a list of ${t} to ${n} ${a}`),e}var ho={number:({min:s,max:e},t)=>typeof t=="number"&&t>=s&&t<=e,choice:({choices:s},e)=>s.includes(e),boolean:(s,e)=>typeof e=="boolean",text:({longest:s},e)=>typeof e=="string"&&e.length<=(s??1/0)},Rn={number:({min:s,max:e})=>`a number from ${s} to ${e}`,choice:({choices:s})=>`one of ${s.join(", ")}`,boolean:()=>"true or false",text:({longest:s})=>s?`text of up to ${s} characters`:"text"};function ue(s,e,t,n=[]){let a=s===""?"":`${s}.`;for(let[i,r]of Object.entries(e)){if(n.includes(i))continue;Object.hasOwn(t,i)||B(`${a}${i}`,r,`only the fields ${[...n,...Object.keys(t)].join(", ")}`);let l=t[i];(r===null?!l.nullable:!ho[l.type](l,r))&&B(`${a}${i}`,r,Rn[l.type](l))}for(let[i,r]of Object.entries(t))r.default===null&&!r.nullable&&!(i in e)&&B(`${a}${i}`,void 0,Rn[r.type](r))}function zt(s,e,t){return ho.text({longest:t},e)||B(s,e,Rn.text({longest:t})),e}var uc=["cable","joint","part","measured"],hc=["vswr","impedance","table","measured"],mc=60;function mo(s,e,t,n){let{kind:a}=V(s,e);t.includes(a)||B(`${s}.kind`,a,`one of ${t.join(", ")}`),ue(s,e,n(a),["kind"])}function pc(s,e,t){let{kind:n}=V(s,e);if(n!=="table")return mo(s,e,hc,a=>t[`load_${a}`]);Q(`${s}.points`,e.points,2,2e3,"points").forEach((a,i)=>{ue(`${s}.points[${i}]`,V(`${s}.points[${i}]`,a),t.point)})}function gc(s,e,t,n){let{preamplifier:a=null}=V(s,e);if(ue(s,e,t.receiver,["preamplifier"]),a===null)return;let i=`${s}.preamplifier`;ue(i,V(i,a),t.preamplifier),a.before_element>=n&&B(`${i}.before_element`,a.before_element,`0 to ${n-1}`)}function Mn(s,e,t=""){let n=t===""?"":`${t}.`;return V(t||"line",s),Q(`${n}elements`,s.elements,1,ps,"elements").forEach((a,i)=>{mo(`${n}elements[${i}]`,a,uc,r=>e[r])}),pc(`${n}load`,s.load,e),s.receiver!==void 0&&gc(`${n}receiver`,s.receiver,e,s.elements.length),ue(t,s,e.station,["elements","load","receiver"]),s}function gs(s,e){return Q("lines",s,1,nt,"lines").map((t,n)=>{let{name:a,request:i}=V(`lines[${n}]`,t);return{name:zt(`lines[${n}].name`,a,mc),request:Mn(i,e,`lines[${n}].request`)}})}var bc={key:"jointwise-lines",blocked:"This browser keeps nothing for the page: your lines end when it is closed. Export them to keep them.",full:"This browser has no room for all of your lines: the latest changes are not kept. Export them to keep them.",spoilt:"The lines kept in this browser could not be read and were set aside. Save them as a file to look for what is left."},at=new fe(bc,({lines:s,current:e},t)=>{let n=gs(s,t);return{lines:n,current:Number.isInteger(e)&&n[e]?e:0}});function ae(s){if(!s)return"";let e=[s.body,s.year,s.place].filter(Boolean).join(", ");return e?`${s.title} (${e})`:s.title}var _c=new Set(["common_practice","memory",""]),wc=s=>s==="source"||s==="sources"||s.endsWith("_source");function*po(s){for(let[e,t]of Object.entries(s??{}))wc(e)?yield*[t].flat():typeof t=="object"&&(yield*po(t))}function bs(...s){let e=new Set(s.flatMap(t=>[...po(t)]).filter(t=>!_c.has(t)));return new Map([...e].map((t,n)=>[t,n+1]))}function go(s,e,t){let n=[...new Set(e)].map(a=>t.get(a)).filter(Boolean);return[[...new Set(s)].join(", "),n.length>0?`[${n.join(", ")}]`:""].filter(Boolean).join(" ")}var bo=s=>new Map(s?.sources.map(e=>[e.id,ae(e)]));var xc=()=>{let s=new Date;return[s.getFullYear(),s.getMonth()+1,s.getDate()].map(e=>String(e).padStart(2,"0")).join("-")},Ln=class extends N{static styles=[...N.styles,m`div { display: flex; gap: 6px; } button { flex: none; }`];render(){return o`<label for=${this.name}>${this.label}</label>
      <div>
        <input id=${this.name} type="date" .value=${this.value} aria-invalid=${this.invalid} aria-describedby="under"
          @change=${e=>this.change(e.target.value)}>
        <button @click=${()=>this.change(xc())}>Today</button>
      </div>
      ${this.under("left out, none is printed")}`}};customElements.define("jw-fitout-date",Ln);var yc=["load","receiver","explain"];function $c({family:s,adapter_to:e,name:t,cable:n,length_m:a}){let i=be({kind:"joint",family:s,adapter_to:e,name:t});return n===null?[i]:[{kind:"cable",cable:n,length_m:a},i]}function _o(s,e){return{...Object.fromEntries(Object.entries(e).filter(([n])=>!yc.includes(n))),...be({station:s.station,date:s.date})}}function wo(s,e){return{elements:$c(s),...be(Object.fromEntries(e.map(t=>[t,s[t]])))}}var Rt=s=>s?.field?.replace(/^elements\[\d+\]\./,"").split(/[[.]/)[0]??"";var vc=["family","adapter_to","cable","length_m","name","exposure","added_sealing"],kc=["power_w","mode","band","frequency_hz","vibration","matings_per_year","service_life_years","ambient_temperature_c"],Sc=142e5,Nn=class extends p({state:f(d),line:f(d),linked:{type:Boolean},refusal:f(d)},v){static styles=[g,de,m`:host { padding: 12px; background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
    .double { grid-column: span 2; }
    p { margin: 4px 0 8px; font-size: 0.9rem; }
    p a { display: inline-grid; min-height: var(--target); align-items: center; }`];render(){return o`<div @jw-change=${this._changed}>
      <h2 class="unseen">What is fitted</h2>
      <div class="fields">${["of","station","date"].map(e=>this._field(e))}</div>
      ${this.state.of==="line"?this._line():this._joint()}
    </div>`}_line(){let{name:e,request:t}=this.line,{length:n}=t.elements,a=n===1?"one element":`${n} elements`;return o`<p><b>${e}</b>, ${a}${this.linked?", as it came with the link":""}.
      <a href="#view=line">Change it in the Line view</a>
      ${this.linked?o`<button @click=${()=>x(this,"jw-fitout-own")}>Use my own line</button>`:u}</p>`}_joint(){return o`<div class="fields">${[...vc,...kc].map(e=>this._field(e))}</div>`}_field(e){if(e==="length_m"&&this.state.cable===null)return u;if(e==="frequency_hz"&&this.state.band!==null)return u;let t=`fitout.${e}`,{refusal:n,state:a}=this,r=n&&Rt(n)===e?le(n,this.vocabulary.labelOf(t)):"";return e==="date"?o`<jw-fitout-date class="double" name=${t} .value=${a.date} .error=${r}></jw-fitout-date>`:q(this.vocabulary,t,a[e],r)}_changed(e){if(e.stopPropagation(),e.detail.live)return;let t=W(e);"band"in t&&(t.frequency_hz=t.band===null?this.state.frequency_hz??Sc:null),x(this,"jw-fitout-change",{changes:t})}};customElements.define("jw-fitout-form",Nn);var Ec=.01;function A(s){return s===null?"–":`${Math.abs(s)<Ec?y(s,1):s.toFixed(2)} dB`}var xo="jointwise-address";var jc=["http:","https:"],Pn=({href:s})=>s.replace(/[?#].*$/,""),qn=s=>URL.canParse(s)&&jc.includes(new URL(s).protocol);function Mt(s){return s===""||s.length<=200&&qn(s)&&!s.includes("#")?"":`Address of the page is “${s}”; allowed: a web address with its http or https, without “#”, up to 200 characters.`}function yo(s){try{let e=s().getItem(xo)??"";return Mt(e)===""?e:""}catch{return""}}function $o(s,e){try{return s().setItem(xo,e),!0}catch{return!1}}var Fe=(s=>(s[s.Border=-1]="Border",s[s.Data=0]="Data",s[s.Function=1]="Function",s[s.Position=2]="Position",s[s.Timing=3]="Timing",s[s.Alignment=4]="Alignment",s))(Fe||{}),Ac=[0,1],ko=[1,0],So=[2,3],Eo=[3,2],Oc={L:Ac,M:ko,Q:So,H:Eo},Tc=/^\d*$/,Cc=/^[A-Z0-9 $%*+./:-]*$/,Wn="0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:",Un=1,Fn=40,vo=3,zc=3,_s=40,Rc=10,jo=[[-1,7,10,15,20,26,18,20,24,30,18,20,24,26,30,22,24,28,30,28,28,28,28,30,30,26,28,30,30,30,30,30,30,30,30,30,30,30,30,30,30],[-1,10,16,26,18,24,16,18,22,22,26,30,22,22,24,24,28,28,26,26,26,26,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28],[-1,13,22,18,26,18,24,18,22,20,24,28,26,24,20,30,24,28,28,26,30,28,30,30,30,30,28,30,30,30,30,30,30,30,30,30,30,30,30,30,30],[-1,17,28,22,16,22,28,26,26,24,28,24,28,22,24,24,30,28,28,26,28,30,24,30,30,30,30,30,30,30,30,30,30,30,30,30,30,30,30,30,30]],Ao=[[-1,1,1,1,1,1,2,2,2,2,4,4,4,4,4,6,6,6,6,7,8,8,9,9,10,12,12,12,13,14,15,16,17,18,19,19,20,21,22,24,25],[-1,1,1,1,2,2,4,4,4,5,5,5,8,9,9,10,10,11,13,14,16,17,17,18,20,21,23,25,26,28,29,31,33,35,37,38,40,43,45,47,49],[-1,1,1,2,2,4,4,6,6,8,8,8,10,12,16,12,17,16,18,21,20,23,23,25,27,29,34,34,35,38,40,43,45,48,51,53,56,59,62,65,68],[-1,1,1,2,4,4,4,5,6,8,8,11,11,16,16,18,16,19,21,25,25,25,34,30,32,35,37,40,42,45,48,51,54,57,60,63,66,70,74,77,81]],In=class{constructor(e,t,n,a){if(this.version=e,this.ecc=t,e<Un||e>Fn)throw new RangeError("Version value out of range");if(a<-1||a>7)throw new RangeError("Mask value out of range");this.size=e*4+17;let i=Array.from({length:this.size}).fill(!1);for(let l=0;l<this.size;l++)this.modules.push(i.slice()),this.types.push(i.map(()=>0));this.drawFunctionPatterns();let r=this.addEccAndInterleave(n);if(this.drawCodewords(r),a===-1){let l=1e9;for(let c=0;c<8;c++){this.applyMask(c),this.drawFormatBits(c);let h=this.getPenaltyScore();h<l&&(a=c,l=h),this.applyMask(c)}}this.mask=a,this.applyMask(a),this.drawFormatBits(a)}size;mask;modules=[];types=[];getModule(e,t){return e>=0&&e<this.size&&t>=0&&t<this.size&&this.modules[t][e]}drawFunctionPatterns(){for(let n=0;n<this.size;n++)this.setFunctionModule(6,n,n%2===0,Fe.Timing),this.setFunctionModule(n,6,n%2===0,Fe.Timing);this.drawFinderPattern(3,3),this.drawFinderPattern(this.size-4,3),this.drawFinderPattern(3,this.size-4);let e=this.getAlignmentPatternPositions(),t=e.length;for(let n=0;n<t;n++)for(let a=0;a<t;a++)n===0&&a===0||n===0&&a===t-1||n===t-1&&a===0||this.drawAlignmentPattern(e[n],e[a]);this.drawFormatBits(0),this.drawVersion()}drawFormatBits(e){let t=this.ecc[1]<<3|e,n=t;for(let i=0;i<10;i++)n=n<<1^(n>>>9)*1335;let a=(t<<10|n)^21522;for(let i=0;i<=5;i++)this.setFunctionModule(8,i,_e(a,i));this.setFunctionModule(8,7,_e(a,6)),this.setFunctionModule(8,8,_e(a,7)),this.setFunctionModule(7,8,_e(a,8));for(let i=9;i<15;i++)this.setFunctionModule(14-i,8,_e(a,i));for(let i=0;i<8;i++)this.setFunctionModule(this.size-1-i,8,_e(a,i));for(let i=8;i<15;i++)this.setFunctionModule(8,this.size-15+i,_e(a,i));this.setFunctionModule(8,this.size-8,!0)}drawVersion(){if(this.version<7)return;let e=this.version;for(let n=0;n<12;n++)e=e<<1^(e>>>11)*7973;let t=this.version<<12|e;for(let n=0;n<18;n++){let a=_e(t,n),i=this.size-11+n%3,r=Math.floor(n/3);this.setFunctionModule(i,r,a),this.setFunctionModule(r,i,a)}}drawFinderPattern(e,t){for(let n=-4;n<=4;n++)for(let a=-4;a<=4;a++){let i=Math.max(Math.abs(a),Math.abs(n)),r=e+a,l=t+n;r>=0&&r<this.size&&l>=0&&l<this.size&&this.setFunctionModule(r,l,i!==2&&i!==4,Fe.Position)}}drawAlignmentPattern(e,t){for(let n=-2;n<=2;n++)for(let a=-2;a<=2;a++)this.setFunctionModule(e+a,t+n,Math.max(Math.abs(a),Math.abs(n))!==1,Fe.Alignment)}setFunctionModule(e,t,n,a=Fe.Function){this.modules[t][e]=n,this.types[t][e]=a}addEccAndInterleave(e){let t=this.version,n=this.ecc;if(e.length!==ws(t,n))throw new RangeError("Invalid argument");let a=Ao[n[0]][t],i=jo[n[0]][t],r=Math.floor(Hn(t)/8),l=a-r%a,c=Math.floor(r/a),h=[],b=Bc(i);for(let $=0,k=0;$<a;$++){let C=e.slice(k,k+c-i+($<l?0:1));k+=C.length;let F=Uc(C,b);$<l&&C.push(0),h.push(C.concat(F))}let _=[];for(let $=0;$<h[0].length;$++)h.forEach((k,C)=>{($!==c-i||C>=l)&&_.push(k[$])});return _}drawCodewords(e){if(e.length!==Math.floor(Hn(this.version)/8))throw new RangeError("Invalid argument");let t=0;for(let n=this.size-1;n>=1;n-=2){n===6&&(n=5);for(let a=0;a<this.size;a++)for(let i=0;i<2;i++){let r=n-i,c=(n+1&2)===0?this.size-1-a:a;!this.types[c][r]&&t<e.length*8&&(this.modules[c][r]=_e(e[t>>>3],7-(t&7)),t++)}}}applyMask(e){if(e<0||e>7)throw new RangeError("Mask value out of range");for(let t=0;t<this.size;t++)for(let n=0;n<this.size;n++){let a;switch(e){case 0:a=(n+t)%2===0;break;case 1:a=t%2===0;break;case 2:a=n%3===0;break;case 3:a=(n+t)%3===0;break;case 4:a=(Math.floor(n/3)+Math.floor(t/2))%2===0;break;case 5:a=n*t%2+n*t%3===0;break;case 6:a=(n*t%2+n*t%3)%2===0;break;case 7:a=((n+t)%2+n*t%3)%2===0;break;default:throw new Error("Unreachable")}!this.types[t][n]&&a&&(this.modules[t][n]=!this.modules[t][n])}}getPenaltyScore(){let e=0;for(let i=0;i<this.size;i++){let r=!1,l=0,c=[0,0,0,0,0,0,0];for(let h=0;h<this.size;h++)this.modules[i][h]===r?(l++,l===5?e+=vo:l>5&&e++):(this.finderPenaltyAddHistory(l,c),r||(e+=this.finderPenaltyCountPatterns(c)*_s),r=this.modules[i][h],l=1);e+=this.finderPenaltyTerminateAndCount(r,l,c)*_s}for(let i=0;i<this.size;i++){let r=!1,l=0,c=[0,0,0,0,0,0,0];for(let h=0;h<this.size;h++)this.modules[h][i]===r?(l++,l===5?e+=vo:l>5&&e++):(this.finderPenaltyAddHistory(l,c),r||(e+=this.finderPenaltyCountPatterns(c)*_s),r=this.modules[h][i],l=1);e+=this.finderPenaltyTerminateAndCount(r,l,c)*_s}for(let i=0;i<this.size-1;i++)for(let r=0;r<this.size-1;r++){let l=this.modules[i][r];l===this.modules[i][r+1]&&l===this.modules[i+1][r]&&l===this.modules[i+1][r+1]&&(e+=zc)}let t=0;for(let i of this.modules)t=i.reduce((r,l)=>r+(l?1:0),t);let n=this.size*this.size,a=Math.ceil(Math.abs(t*20-n*10)/n)-1;return e+=a*Rc,e}getAlignmentPatternPositions(){if(this.version===1)return[];{let e=Math.floor(this.version/7)+2,t=this.version===32?26:Math.ceil((this.version*4+4)/(e*2-2))*2,n=[6];for(let a=this.size-7;n.length<e;a-=t)n.splice(1,0,a);return n}}finderPenaltyCountPatterns(e){let t=e[1],n=t>0&&e[2]===t&&e[3]===t*3&&e[4]===t&&e[5]===t;return(n&&e[0]>=t*4&&e[6]>=t?1:0)+(n&&e[6]>=t*4&&e[0]>=t?1:0)}finderPenaltyTerminateAndCount(e,t,n){return e&&(this.finderPenaltyAddHistory(t,n),t=0),t+=this.size,this.finderPenaltyAddHistory(t,n),this.finderPenaltyCountPatterns(n)}finderPenaltyAddHistory(e,t){t[0]===0&&(e+=this.size),t.pop(),t.unshift(e)}};function we(s,e,t){if(e<0||e>31||s>>>e)throw new RangeError("Value out of range");for(let n=e-1;n>=0;n--)t.push(s>>>n&1)}function _e(s,e){return(s>>>e&1)!==0}var Lt=class{constructor(e,t,n){if(this.mode=e,this.numChars=t,this.bitData=n,t<0)throw new RangeError("Invalid argument");this.bitData=n.slice()}getData(){return this.bitData.slice()}},Mc=[1,10,12,14],Lc=[2,9,11,13],Nc=[4,8,16,16];function Oo(s,e){return s[Math.floor((e+7)/17)+1]}function To(s){let e=[];for(let t of s)we(t,8,e);return new Lt(Nc,s.length,e)}function Pc(s){if(!Co(s))throw new RangeError("String contains non-numeric characters");let e=[];for(let t=0;t<s.length;){let n=Math.min(s.length-t,3);we(Number.parseInt(s.substring(t,t+n),10),n*3+1,e),t+=n}return new Lt(Mc,s.length,e)}function qc(s){if(!zo(s))throw new RangeError("String contains unencodable characters in alphanumeric mode");let e=[],t;for(t=0;t+2<=s.length;t+=2){let n=Wn.indexOf(s.charAt(t))*45;n+=Wn.indexOf(s.charAt(t+1)),we(n,11,e)}return t<s.length&&we(Wn.indexOf(s.charAt(t)),6,e),new Lt(Lc,s.length,e)}function Wc(s){return s===""?[]:Co(s)?[Pc(s)]:zo(s)?[qc(s)]:[To(Hc(s))]}function Co(s){return Tc.test(s)}function zo(s){return Cc.test(s)}function Ic(s,e){let t=0;for(let n of s){let a=Oo(n.mode,e);if(n.numChars>=1<<a)return Number.POSITIVE_INFINITY;t+=4+a+n.bitData.length}return t}function Hc(s){s=encodeURI(s);let e=[];for(let t=0;t<s.length;t++)s.charAt(t)!=="%"?e.push(s.charCodeAt(t)):(e.push(Number.parseInt(s.substring(t+1,t+3),16)),t+=2);return e}function Hn(s){if(s<Un||s>Fn)throw new RangeError("Version number out of range");let e=(16*s+128)*s+64;if(s>=2){let t=Math.floor(s/7)+2;e-=(25*t-10)*t-55,s>=7&&(e-=36)}return e}function ws(s,e){return Math.floor(Hn(s)/8)-jo[e[0]][s]*Ao[e[0]][s]}function Bc(s){if(s<1||s>255)throw new RangeError("Degree out of range");let e=[];for(let n=0;n<s-1;n++)e.push(0);e.push(1);let t=1;for(let n=0;n<s;n++){for(let a=0;a<e.length;a++)e[a]=Bn(e[a],t),a+1<e.length&&(e[a]^=e[a+1]);t=Bn(t,2)}return e}function Uc(s,e){let t=e.map(n=>0);for(let n of s){let a=n^t.shift();t.push(0),e.forEach((i,r)=>t[r]^=Bn(i,a))}return t}function Bn(s,e){if(s>>>8||e>>>8)throw new RangeError("Byte out of range");let t=0;for(let n=7;n>=0;n--)t=t<<1^(t>>>7)*285,t^=(e>>>n&1)*s;return t}function Fc(s,e,t=1,n=40,a=-1,i=!0){if(!(Un<=t&&t<=n&&n<=Fn)||a<-1||a>7)throw new RangeError("Invalid value");let r,l;for(r=t;;r++){let _=ws(r,e)*8,$=Ic(s,r);if($<=_){l=$;break}if(r>=n)throw new RangeError("Data too long")}for(let _ of[ko,So,Eo])i&&l<=ws(r,_)*8&&(e=_);let c=[];for(let _ of s){we(_.mode[0],4,c),we(_.numChars,Oo(_.mode,r),c);for(let $ of _.getData())c.push($)}let h=ws(r,e)*8;we(0,Math.min(4,h-c.length),c),we(0,(8-c.length%8)%8,c);for(let _=236;c.length<h;_^=253)we(_,8,c);let b=Array.from({length:Math.ceil(c.length/8)},()=>0);return c.forEach((_,$)=>b[$>>>3]|=_<<7-($&7)),new In(r,e,b,a)}function Ro(s,e){let{ecc:t="L",boostEcc:n=!1,minVersion:a=1,maxVersion:i=40,maskPattern:r=-1,border:l=1}=e||{},c=typeof s=="string"?Wc(s):Array.isArray(s)?[To(s)]:void 0;if(!c)throw new Error(`uqr only supports encoding string and binary data, but got: ${typeof s}`);let h=Fc(c,Oc[t],a,i,r,n),b=Dc({version:h.version,maskPattern:h.mask,size:h.size,data:h.modules,types:h.types},l);return e?.invert&&(b.data=b.data.map(_=>_.map($=>!$))),e?.onEncoded?.(b),b}function Dc(s,e=1){if(!e)return s;let{size:t}=s,n=t+e*2;s.size=n,s.data.forEach(i=>{for(let r=0;r<e;r++)i.unshift(!1),i.push(!1)});for(let i=0;i<e;i++)s.data.unshift(Array.from({length:n},r=>!1)),s.data.push(Array.from({length:n},r=>!1));let a=Fe.Border;s.types.forEach(i=>{for(let r=0;r<e;r++)i.unshift(a),i.push(a)});for(let i=0;i<e;i++)s.types.unshift(Array.from({length:n},r=>a)),s.types.push(Array.from({length:n},r=>a));return s}var Gc="M",Vc=4;function Mo(s,{fragment:e},t){let n=Number(new URLSearchParams(e).get("power_w")),a=us(t,n);return`${s}#${e}${a===t?"":`&powers_w=${a.join(",")}`}`}function Lo(s){let{data:e,size:t}=Ro(s,{ecc:Gc,border:Vc}),n="";return e.forEach((a,i)=>{for(let r=0;r<t;r++){if(!a[r])continue;let l=r;for(;a[r+1];)r++;n+=`M${l} ${i}h${r-l+1}v1H${l}z`}}),{size:t,path:n}}var Dn=class extends p({result:f(d),_typed:w(d),_unkept:w(d)},v){static styles=[g,j,m`
      .address { max-width: 640px; margin-bottom: 10px; }
      label { display: block; font-size: 0.8rem; font-weight: 600; }
      .labels { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 340px), 1fr)); gap: 10px; }
      .label {
        display: flex; gap: 8px; justify-content: space-between; padding: 8px; color: #000; background: #fff;
        border: 1px dashed #666; break-inside: avoid;
      }
      .label p { font-size: 0.8rem; line-height: 1.3; }
      .label .name { font-size: 1rem; font-weight: 700; overflow-wrap: anywhere; }
      svg { flex: none; width: 128px; height: 128px; }
      @media print {
        .noprint { display: none; }
        .panel { border: 0; padding: 0; break-inside: auto; }
        .labels { display: block; font-size: 0; }
        .label {
          display: inline-flex; width: 88mm; height: 36mm; padding: 2mm; margin: 0 2mm 2mm 0; vertical-align: top;
          overflow: hidden;
        }
        .label p { font-size: 7.5pt; }
        .label .name { font-size: 10pt; }
        svg { width: 31mm; height: 31mm; }
      }
    `];constructor(){super(),this._typed=yo(()=>localStorage),this._unkept=!1}render(){let e=Mt(this._typed);return o`<section class="panel">
      <h2>Labels</h2>
      <div class="address noprint">
        <label for="address">Address of the page in the codes</label>
        <input id="address" type="url" autocomplete="off" placeholder=${Pn(location)} .value=${this._typed}
          aria-invalid=${e?"true":"false"} aria-describedby="about" @change=${this._changed}>
        <p id="about" class=${e?"error":"quiet"}
          role=${e?"alert":"note"}>${e||this._about()}</p>
      </div>
      <div class="labels">${this.result.joints.map(t=>this._label(t))}</div>
    </section>`}get _address(){return this._typed!==""&&Mt(this._typed)===""?this._typed:Pn(location)}_about(){let e=this._unkept?" This browser keeps nothing for the page, so give it again next time.":"";return qn(this._address)?`Each code opens the derivation of its joint at ${this._address}.${e}`:"This page is a file, so its codes open on this device alone; give the address of a served page, and they open there."}_changed(e){this._typed=e.target.value.trim(),Mt(this._typed)===""&&(this._unkept=!$o(()=>localStorage,this._typed))}_label({heading:e,label:t}){let n=Mo(this._address,t,this.vocabulary.first.matrix.powers_w),{size:a,path:i}=Lo(n),{station:r}=this.result;return o`<div class="label">
      <div>
        <p class="name">${t.name}</p>
        <p><b>${t.family}</b>${r?`, ${r}`:""}</p>
        ${t.date?o`<p>Fitted ${t.date}</p>`:u}
        <p>At ${O(t.frequency_hz)}:</p>
        <p>loss ${A(t.expected_loss_db)}</p>
        <p>return loss ${t.expected_return_loss_db.toFixed(0)} dB, least ${t.least_return_loss_db.toFixed(0)}
        dB</p>
      </div>
      <svg viewBox="0 0 ${a} ${a}" role="img" aria-label="Code that opens the derivation of ${e}"
        shape-rendering="crispEdges">
        ${P`<rect width=${a} height=${a} fill="#fff"></rect><path d=${i} fill="#000"></path>`}
      </svg>
    </div>`}};customElements.define("jw-fitout-labels",Dn);var he=(s,e,t)=>o`<small class="from">${go(s,e,t)}</small>`,De=({text:s,kind:e,source:t},n)=>o`${s} ${he([e],[t],n)}`,xe=(s,e)=>o`<ul>${s.map(t=>o`<li>${De(t,e)}</li>`)}</ul>`;function No(s,e){let t=[];return s.forEach((n,a)=>{t.at(-1)?.at!==n.at&&t.push({at:n.at,first:a+1,steps:[]}),t.at(-1).steps.push(n)}),t.map(({at:n,first:a,steps:i})=>o`<h4>${n?`On ${n}`:"The pair"}</h4>
      <ol start=${a}>${i.map(r=>o`<li>${De(r,e)}</li>`)}</ol>`)}function xs(s,e){return s.size===0?u:o`<p class="sources">${[...s].map(([t,n])=>o`<span>[${n}] ${e.get(t)??t}. </span>`)}</p>`}var Po=10,qo=1e-9,Gn=({quantity:s,unit:e})=>e==="m"?Math.ceil(s*Po-qo)/Po:Math.ceil(s-qo),Kc=[["what",s=>s.what],["detail",s=>s.detail],["quantity",Gn],["unit",s=>s.unit],["family",s=>s.family],["cable",s=>s.cable]],Wo=s=>Ae(Kc,s);var it=m`
  h2 { font-size: 1.15rem; }
  h3 { margin: 0 0 4px; }
  h4 { margin: 6px 0 2px; font-weight: 600; }
  ul, ol { margin: 0; padding-left: 1.25em; font-size: 0.9rem; }
  ol { padding-left: 1.9em; }
  li + li { margin-top: 4px; }
  .from { color: var(--soft); font-size: 0.78em; line-height: 1.25; }
  .from::before { content: '– '; }
  .sources { color: var(--soft); font-size: 0.78rem; }
  .columns { columns: 2 340px; column-gap: 24px; margin-top: 10px; }
  .columns > section { break-inside: avoid-column; padding-bottom: 12px; }
  .warning {
    padding: 8px 12px; margin-top: 8px; border-left: 4px solid var(--alarm); background: var(--alarm-wash);
    border-radius: 4px; font-size: 0.9rem;
  }
  .figure { font-size: 1.15rem; font-weight: 700; }
  .figure::first-letter { text-transform: uppercase; }
  .plain td { vertical-align: top; }
  @media print {
    h2 { font-size: 12pt; }
    h3 { font-size: 9pt; margin-bottom: 0.5mm; break-after: avoid; }
    h4 { font-size: 8pt; margin: 0.5mm 0 0; break-after: avoid; }
    ul, ol, p, .plain, .warning { font-size: 8pt; line-height: 1.25; }
    li + li { margin-top: 0.3mm; }
    li, tr { break-inside: avoid; }
    .from { font-size: 6.2pt; }
    .sources { font-size: 6.2pt; margin-top: 1mm; }
    .columns { columns: 2; column-gap: 6mm; margin-top: 2mm; }
    .columns > section { padding-bottom: 2mm; break-inside: auto; }
    .columns > #torque { break-inside: avoid; }
    .figure { font-size: 10pt; }
  }
`,Io=m`
  .bar label { display: flex; gap: 6px; align-items: center; font-size: 0.8rem; font-weight: 600; white-space: nowrap; }
  .bar select { font-weight: 400; }
  .joints { display: flex; flex-wrap: wrap; gap: 6px; }
  .joints button { font-size: 0.85rem; }
  @media screen { jw-fitout-sheet:not([data-shown]) { display: none; } }
  @media print {
    .joints { display: none; }
    jw-fitout-sheet { break-before: page; }
    jw-fitout-sheet:first-of-type { break-before: auto; }
    jw-fitout-list, jw-fitout-labels { break-before: page; }
    [data-paper='sheets'] :is(jw-fitout-list, jw-fitout-labels),
    [data-paper='list'] :is(jw-fitout-sheet, jw-fitout-labels),
    [data-paper='labels'] :is(jw-fitout-sheet, jw-fitout-list, jw-cautions) { display: none; }
    [data-paper='list'] jw-fitout-list, [data-paper='labels'] jw-fitout-labels { break-before: auto; }
    [data-flowing] jw-fitout-sheet { break-before: auto; margin-bottom: 4mm; }
  }
`;var Vn=s=>`${s.toFixed(1)} dB`,Yc=[["expected_loss_db","Loss of the line",A],["expected_return_loss_db","Return loss, expected",Vn],["least_return_loss_db","Return loss, least: below it something is wrong",Vn],["shorted_return_loss_db","Return loss with the far end shorted",Vn]],Kn=class extends p({result:f(d),titles:f(d)}){static styles=[g,j,it,m`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; }
      .head { display: flex; flex-wrap: wrap; gap: 8px; justify-content: space-between; align-items: center; }
      .head button { font-size: 0.85rem; }
      p { font-size: 0.9rem; }
      .plain { margin: 4px 0 8px; }
      @media print { button { display: none; } .panel { border: 0; padding: 0; break-inside: auto; } }
    `];render(){let{bonding:e,marks:t,measurement:n,quantities:a}=this.result,i=bs(n,{bonding:e});return o`<section class="panel" id="quantities">
        <div class="head"><h2>What to have ready</h2>
          <button ?disabled=${a.length===0}
            @click=${()=>M("jointwise-quantities.csv","text/csv",Wo(a))}>List as
            CSV</button></div>
        <table class="plain">
          <thead><tr><th scope="col">What</th><th scope="col">Detail</th><th scope="col"
            class="number">Quantity</th></tr></thead>
          <tbody>${a.map(r=>o`<tr><th scope="row">${r.what}</th><td>${r.detail}</td><td
                class="number">${Gn(r)}${r.unit==="m"?" m":""}</td></tr>`)}</tbody>
        </table>
        ${t.map(r=>o`<p class="warning">${r}</p>`)}
      </section>
      <section class="panel" id="measurement">
        <h2>First measurement</h2>
        <p>At ${O(n.frequency_hz)}, with a good load of ${y(n.load_ohm)} Ω in place of
        the antenna:</p>
        <table class="plain"><tbody>${Yc.filter(([r])=>n[r]!==null).map(([r,l,c])=>o`<tr data-field=${r}><th scope="row">${l}</th><td
              class="number">${c(n[r])}</td></tr>`)}</tbody></table>
        ${xe(n.advice,i)}
      </section>
      ${e.length>0?o`<section class="panel" id="bonding"><h2>Bonding and
          lightning</h2>${xe(e,i)}</section>`:u}
      ${xs(i,this.titles)}`}};customElements.define("jw-fitout-list",Kn);var Yn=class extends p({sheet:f(d),numbers:f(d)}){static styles=[g,it,m`
      :host { display: contents; }
      section { padding-bottom: 12px; break-inside: avoid-column; }
      @media print { section { padding-bottom: 2mm; break-inside: auto; } }
      .not { color: var(--alarm); font-weight: 700; }
    `];render(){let{galvanic:e,inspection:t,near_relatives:n,wear:a}=this.sheet,{numbers:i}=this;return o`<section id="galvanic"><h3>Metals that meet</h3>
        <ul>${e.map(r=>o`<li><span class=${r.passed?"":"not"}>${r.contact}: ${r.sentence}</span>
            ${he(r.kinds,r.sources,i)}</li>`)}</ul></section>
      <section id="inspection"><h3>Look again</h3>
        <p>Every ${t.interval_months} months${t.due?o`, next by <b>${t.due}</b>`:""}${t.note?`; ${t.note}`:""}.
        ${he([t.kind],[t.source],i)}</p>
        ${xe(t.checks,i)}</section>
      <section id="wear"><h3>Wear</h3><p>${a.sentence} ${he([a.kind],[a.source],i)}</p></section>
      ${n.length>0?o`<section id="relatives"><h3>Near relatives: what not to mate</h3>
            <ul>${n.map(r=>o`<li><b>${r.name}, ${r.verdict}.</b> ${De(r,i)}</li>`)}</ul></section>`:u}`}};customElements.define("jw-fitout-care",Yn);var Xn=s=>`${y(s*1e3,3)} mm`,Zn=class extends p({sheet:f(d),titles:f(d),of:{type:String}}){static styles=[g,I,it,m`
      article {
        padding: 14px 16px; background: var(--card); border: 1px solid var(--line); border-radius: var(--round);
      }
      @media print { article { padding: 0; border: 0; } }
    `];render(){let{sheet:e}=this,t=this._numbers;return o`<article aria-labelledby="heading">
      <h2 id="heading">${e.heading}${G(e.pack)}</h2>
      ${this.of?o`<p class="quiet">${this.of}</p>`:u}
      ${e.warnings.map(n=>o`<p class="warning"><b>${n.name}.</b> ${n.sentence} ${he([n.kind],[n.source],t)}</p>`)}
      <div class="columns">
        <section id="parts"><h3>Parts</h3>${this._parts()}</section>
        <section id="tools"><h3>Tools</h3>${xe(e.tools,t)}</section>
        <section id="steps"><h3>Steps</h3>${No(e.steps,t)}</section>
        <section id="torque"><h3>Torque</h3>${this._torque()}</section>
        <section id="sealing"><h3>Sealing</h3>${this._sealing()}</section>
        ${this._cable()}
        <jw-fitout-care .sheet=${e} .numbers=${t}></jw-fitout-care>
      </div>
      ${xs(t,this.titles)}
    </article>`}get _numbers(){return bs(this.sheet)}_parts(){let{adapter:e,gender:t,halves:n}=this.sheet;return o`<table class="plain"><thead><tr><th scope="col">Half</th><th scope="col">On</th><th
      scope="col">Put on by</th></tr></thead>
      <tbody>${n.map(a=>o`<tr><th scope="row">${a.half}, ${this.sheet.family_name}</th>
          <td>${a.on}${a.cable_diameter_m===null?"":`, ${Xn(a.cable_diameter_m)}`}</td><td
            >${a.attachment||"–"}</td></tr>`)}</tbody></table>
      <ul>${e?o`<li>Adapter: ${e}</li>`:u}<li>${De(t,this._numbers)}</li></ul>`}_torque(){let{torque:e}=this.sheet;return o`<p class="figure">${e.sentence}</p>
      <p class="quiet">${e.notes.join("; ")}</p>${he(e.kinds,e.sources,this._numbers)}`}_sealing(){let{sealing:e}=this.sheet,t=this._numbers,n=e.mated_meaning.map(({text:a})=>a).join("; ");return o`<p class=${e.refused?"warning":""}>${e.sentence}
    ${he([e.kind],[e.source],t)}</p>
      <p class="quiet">Mated: ${e.mated}${n&&`, ${n}`}.</p>
      ${this._part("Prepare",e.preparation)}
      ${e.layers.length>0?o`<h4>Layers, from the inside out</h4>
            <ol class="layers">${e.layers.map(a=>o`<li><b>${a.name}</b>, ${y(a.length_m,2)} m. ${De(a,t)}</li>`)}</ol>`:u}
      ${this._part("Lead the water away",e.water)}`}_part(e,t){return t.length>0?o`<h4>${e}</h4>${xe(t,this._numbers)}`:u}_cable(){let{bends:e,relief:t}=this.sheet;return e.length+t.length===0?u:o`<section id="bends"><h3>Bends and strain relief</h3>
      <ul>${e.map(n=>o`<li>${this._bend(n)}</li>`)}</ul>${xe(t,this._numbers)}</section>`}_bend(e){let t=e.repeated_radius_m===null?"not to be bent again":`bent again and again: ${Xn(e.repeated_radius_m)}`,n=[e.fixed_kind,e.repeated_kind].filter(Boolean),a=[e.fixed_source,e.repeated_source].filter(Boolean);return o`${e.name}, smallest radius laid once: ${Xn(e.fixed_radius_m)}; ${t}.
      ${he(n,a,this._numbers)}`}};customElements.define("jw-fitout-sheet",Zn);function Xc(s){let e=new TextEncoder().encode(s);return btoa(String.fromCharCode(...e)).replaceAll("+","-").replaceAll("/","_").replace(/=+$/,"")}function Zc(s){let e=Uint8Array.from(atob(s.replaceAll("-","+").replaceAll("_","/")),t=>t.charCodeAt(0));return new TextDecoder("utf-8",{fatal:!0}).decode(e)}function ys(s,e,t,n=s){let a=JSON.stringify(t),i=a.length>1500?void 0:`${s}&${e}=${Xc(a)}`;return i===void 0||i.length>1500?{fragment:n,whole:!1}:{fragment:i,whole:!0}}function $s(s,{key:e,names:t,unfolded:n=l=>l,read:a,what:i,instead:r}){let l=new URLSearchParams(s),c=[...l.keys()].filter(b=>b!==e&&!t.includes(b)),h=c.length>0?`This link holds what the page does not know: ${c.join(", ")}.`:"";if(!l.has(e))return{document:void 0,problem:h};try{return{document:a(Jc(l.get(e),n)),problem:h}}catch(b){if(!(b instanceof RangeError))throw b;return{document:void 0,problem:`The ${i} in this link can’t be used: ${b.message} ${r}`}}}function Jc(s,e){try{return e(JSON.parse(Zc(s)))}catch{throw new RangeError("it is cut short or altered.")}}var Qc=60;function rt({name:s,request:e},t){let n=(l,c)=>c===null?[]:[`${l}=${encodeURIComponent(c)}`],[a,i,r]=[n("view","line"),n("name",s),n("open",t)];return ys([...a,...i,...r].join("&"),"line",e,[...a,...r].join("&"))}function vs(s,e){let t=new URLSearchParams(s),{document:n,problem:a}=$s(s,{key:"line",names:["view","name","open"],read:r=>Mn(r,e),what:"line",instead:"Your own lines are shown instead."});return{line:n&&{name:(t.get("name")||"Line from a link").slice(0,Qc),request:n},open:t.get("open")||null,problem:a}}var ef=["line","line_name"];function Jn(s,e){let t=new URLSearchParams(rt(e,null).fragment);return t.has("line")?{fragment:`${s}&line=${t.get("line")}&line_name=${encodeURIComponent(e.name)}`,whole:!0}:{fragment:s,whole:!1}}function Ho(s,e){let n=s.split("&").filter(c=>!ef.includes(c.split("=")[0])).join("&"),a=new URLSearchParams(s);if(!a.has("line"))return{line:void 0,rest:n,problem:""};let i=encodeURIComponent(a.get("line_name")??""),{line:r,problem:l}=vs(`view=line&line=${a.get("line")}&name=${i}`,e);return{line:r,rest:n,problem:l}}var tf=[["all","everything"],["sheets","joint sheets"],["list","list and measurement"],["labels","labels"]],sf="This browser keeps nothing for the page, so the line at hand is the example. Choose a single joint, or open a link that holds your line.",nf=["station","date"],Nt=class s extends p({_state:w(d),_line:w(d),_paper:w(d),_flowing:w(d)},Y){static view="fitout";static styles=[g,ce,Io];constructor(){super(),this._own=d,this._paper="all",this._flowing=!1,this._fitout=this._enquiry("fitout"),this._catalogue=this._enquiry("catalogue")}_begin(){this._state=this._first}get _first(){return this.vocabulary.first.fitout}render(){let{error:e,result:t}=this._fitout;return o`${this._progress(this._fitout)}
      <main @jw-fitout-change=${({detail:n})=>this._change(n.changes)}
        @jw-fitout-own=${()=>this._take(void 0)}>
        ${this._bar()} ${this._trouble()}
        <jw-fitout-form class="noprint" .state=${this._state} .line=${this._atHand} .linked=${this._line!==void 0}
          .refusal=${e}></jw-fitout-form>
        ${t?this._answer(t):o`<p class="waiting quiet">${e?e.message:"The core is at work…"}</p>`}
      </main>`}_bar(){return o`<div class="bar" role="group" aria-label="Take along">
      <button @click=${this._copy}>Copy link</button>
      <label>On paper <select id="paper" @change=${e=>this._paper=e.target.value}>
        ${tf.map(([e,t])=>o`<option value=${e} .selected=${e===this._paper}>${t}</option>`)}
      </select></label>
      <button id="flowing" aria-pressed=${this._flowing}
        @click=${()=>this._flowing=!this._flowing}>Several joints a page</button>
      <button @click=${()=>window.print()}>Print</button>
    </div>`}_answer(e){let t=bo(this._catalogue.result),n=[e.station,e.date].filter(Boolean).join(", "),a=Math.min(this._state.shown,e.joints.length);return o`<div class="answer" data-paper=${this._paper} ?data-flowing=${this._flowing}>
      <p class="unseen" role="status"
        >${e.joints.length===1?"One sheet.":`${e.joints.length} sheets.`}</p>
      ${e.joints.length===0?o`<p class="trouble">This line has no joint, so there is nothing to fit but its cable.</p>`:u}
      ${e.joints.length>1?o`<div class="joints" role="group" aria-label="Joints">${e.joints.map(({number:i,label:r,family_name:l})=>o`<button aria-pressed=${i===a}
                  @click=${()=>this._change({shown:i})}>${r.name}, ${l}</button>`)}</div>`:u}
      ${e.joints.map(i=>o`<jw-fitout-sheet ?data-shown=${i.number===a} .sheet=${i} .titles=${t}
            of=${n}></jw-fitout-sheet>`)}
      <jw-fitout-list .result=${e} .titles=${t}></jw-fitout-list>
      <jw-cautions .cautions=${e.cautions}></jw-cautions>
      ${e.joints.length>0?o`<jw-fitout-labels .result=${e}></jw-fitout-labels>`:u}
    </div>`}_trouble(){let{error:e,result:t}=this._fitout;if(!e)return u;let n=this._state.of==="line"?nf.includes(Rt(e)):Rt(e)in this.vocabulary.fields.fitout,a=t?"Out of date, these are the sheets from before the last change. ":"";return n&&!a?u:o`<p class="trouble" role="alert">${a}${e.message} <button
      @click=${()=>this._ask(!0)}>Try again</button></p>`}get _atHand(){return this._line??this._own}get _request(){return this._state.of==="line"?_o(this._state,this._atHand.request):wo(this._state,Object.keys(Ct(D.requests.fitout)))}_ask(e=!1){let t=JSON.stringify(this._request);!e&&t===this._asked||(this._asked=t,this._fitout.askNext(this._request),["initial","error"].includes(this._catalogue.status)&&this._catalogue.ask({}))}_change(e){this._state={...this._state,...e},this._address()}_take(e){this._line=e,this._address()}_address(){let e=Ie(s.view,this._state,this._first),t=this._line?Jn(e,this._line).fragment:e;t!==location.hash.slice(1)&&history.pushState(null,"",`#${t}`)}_restore(e){let{fields:t}=this.vocabulary,{line:n,rest:a,problem:i}=Ho(e,t),r=Ze(a,t.fitout,this._first),l=at.recalled(()=>localStorage,t);this._own=ne(l.document??Ue),this._state=r.state,this._line=n,i?this._notice({text:i}):r.unknown.length>0?this._notice(je(r.unknown)):l.problem&&!n&&this._notice(this._lost(l))}_lost({problem:e,spoilt:t}){return t?{text:e,action:{words:"Save them",run:()=>M("jointwise-lines-unread.txt","text/plain",t)}}:{text:sf}}async _copy(){let e=Ie(s.view,this._state,this._first),{fragment:t,whole:n}=this._state.of==="line"?Jn(e,this._atHand):{fragment:e,whole:!0};this._notice(n?await Z(`${location.href.replace(/#.*$/,"")}#${t}`):{text:"This line is too long for a link; export it in the Line view instead."})}};customElements.define("jw-fitout-view",Nt);var Bo=({bands:s,cables:e,families:t})=>({"fitout.of":{label:"Sheets for",options:{line:"the whole line",joint:"a single joint"}},"fitout.station":{label:"Station"},"fitout.date":{label:"Day of fitting"},"fitout.family":{label:"Family",entries:t},"fitout.adapter_to":{label:"Adapter to",options:se("no adapter",t)},"fitout.name":{label:"Name on the label"},"fitout.cable":{label:"On this cable",options:se("no cable",e)},"fitout.length_m":{label:"Length of the cable",unit:"m"},"fitout.power_w":{label:"Power, peak envelope"},"fitout.band":{label:"Band",options:se("spot frequency",s)},"fitout.frequency_hz":{label:"Spot frequency",factor:1e6,unit:"MHz"}});var Uo={id:Nt.view,label:"Fit-out",fields:fo,words:Bo,upright:!0,element:({transport:s,stage:e})=>o`<jw-fitout-view class="view" .transport=${s} .stage=${e}></jw-fitout-view>`};var Fo=({requests:s,parts:e},{cable_dielectrics:t,conditions:n,families:a,modes:i})=>({port:st(e.Port,{family:a}),owned:st(e.OwnedAdapter,{one_family:a,other_family:a}),kit:st(s.kit,{mode:i,condition:n,cable_dielectric:t})});var Do=s=>({past:[],present:s,future:[]});function Go(s,e){return e===s.present?s:{past:[...s.past,s.present].slice(-200),present:e,future:[]}}function Vo({past:s,present:e,future:t}){return s.length===0?{past:s,present:e,future:t}:{past:s.slice(0,-1),present:s[s.length-1],future:[e,...t]}}function Ko({past:s,present:e,future:t}){return t.length===0?{past:s,present:e,future:t}:{past:[...s,e],present:t[0],future:t.slice(1)}}var ot=class{#e;#t;#s;problem;spoilt;constructor(e,t,n,a){let{document:i,spoilt:r,problem:l}=e.recalled(t,n);this.#t=e,this.#s=t,this.#e=Do(i??a),this.problem=l,this.spoilt=r}get present(){return this.#e.present}get canUndo(){return this.#e.past.length>0}get canRedo(){return this.#e.future.length>0}put(e,t=!0){this.#n(t?Go(this.#e,e):{...this.#e,present:e})}undo(){this.#n(Vo(this.#e))}redo(){this.#n(Ko(this.#e))}#n(e){this.#e=e,this.problem=this.#t.remember(this.#s,e.present)}};var ye=(s,e,t)=>`${s.find(({id:n})=>n===e)?.name??e} ${t}`,Qn=(s,{name:e,family:t,gender:n})=>e||ye(s,t,n),ea=(s,e)=>e.map(t=>Qn(s,t)),ks=([s,e],t)=>`${s+1} ${t[s]} – ${e+1} ${t[e]}`,Te=([s,e])=>`${s+1}–${e+1}`,Yo=({highest_frequency_hz:s,power_w:e})=>`up to ${O(s)}, ${e===void 0?"any power":T(e)}`;var lt=class{#e;#t;pixels;constructor(e,t){this.#e=e,this.pixels=t,this.#t=new ResizeObserver(([{contentRect:n}])=>this.#s(Math.round(n.width))),e.addController(this)}hostConnected(){this.#t.observe(this.#e)}hostDisconnected(){this.#t.disconnect()}#s(e){e===0||e===this.pixels||(this.pixels=e,this.#e.requestUpdate())}};var af=[.5,.42,.58,.34,.66,.27,.73,.2,.8],ta=(s,e,t)=>({x:s.x+(e.x-s.x)*t,y:s.y+(e.y-s.y)*t}),rf=(s,e)=>Math.hypot(s.x-e.x,s.y-e.y);function Zo(s,e){return s.length===1?s[0]:Zo(s.slice(1).map((t,n)=>ta(s[n],t,e)),e)}var Xo=({x:s,y:e})=>`${s.toFixed(1)} ${e.toFixed(1)}`;function of([s,...e]){return`M${Xo(s)}${e.length===3?"C":"Q"}${e.map(Xo).join(" ")}`}function lf(s,e){let t=Math.min(Math.max(s*48,280),560),n={x:e/2,y:t/2},[a,i]=[e/2-150-10,t/2-44];return{points:Array.from({length:s},(l,c)=>{let h=2*Math.PI*c/s-Math.PI/2,[b,_]=[Math.cos(h),Math.sin(h)],$=Math.abs(b)<.2;return{x:n.x+a*b,y:n.y+i*_,anchor:$?"middle":b>0?"start":"end",label:$?{x:0,y:_<0?-27:22}:{x:b>0?13:-13,y:-3}}}),height:t,curve:(l,c)=>[l,ta(ta(l,c,.5),n,.15),c]}}function df(s,e,t){let n=Array.from({length:s},(r,l)=>({x:150,y:44*(l+.5),anchor:"end",label:{x:-13,y:-3}})),a=(e-150-22)/.75/t,i=(r,l)=>{let c=150+a*Math.abs(r.y-l.y)/44;return[r,{x:c,y:r.y},{x:c,y:l.y},l]};return{points:n,height:44*s,curve:i}}function Jo(s,e,t){let n=Math.max(1,...e.map(([h,b])=>Math.abs(h-b))),{points:a,height:i,curve:r}=t<560?df(s,t,n):lf(s,t),l=[],c=e.map(([h,b])=>{let _=r(a[h],a[b]),$=af.map(C=>Zo(_,C)),k=$.find(C=>l.every(F=>rf(F,C)>=26));return l.push(k??$[0]),{path:of(_),mark:l.at(-1)}});return{height:i,ports:a,lines:c}}var Qo=({joined:s,trap:e})=>`${s?s.adapters.length:"no"}${e?"!":""}`;function el(s,{pairs:e,joined:t}){let n=e.length-t,a=n===0?"all can be joined":`${t} can be joined, ${n} can’t`,i=e.length===1?"1 pair":`${e.length} pairs`;return`${s} ports and ${i}: ${a}. Every pair is in the list below.`}var cf=720,sl=22,ff=s=>s.length>sl?`${s.slice(0,sl-1)}…`:s,sa=class extends p({result:f(d),ports:f(d),names:f(d)},v){static styles=[g,m`
      svg { display: block; width: 100%; height: auto; }
      text { fill: var(--ink); font-size: 12.5px; font-weight: 600; }
      .end { fill: var(--soft); font-size: 11px; font-weight: 400; }
      .dot { fill: var(--card); stroke: var(--ink); stroke-width: 2; }
      .at { font-size: 10px; text-anchor: middle; }
      .line { fill: none; stroke: var(--edge); stroke-width: 2; }
      [data-added] .line { stroke: var(--accent); stroke-width: 3; }
      [data-apart] .line { stroke: var(--alarm); stroke-dasharray: 5 5; }
      .plate { fill: var(--card); stroke: var(--edge); }
      [data-added] .plate { stroke: var(--accent); }
      [data-apart] .plate { stroke: var(--alarm); }
      .mark { font-size: 11.5px; text-anchor: middle; }
      .legend { margin-top: 6px; }
      @media print { svg { max-height: 110mm; } .legend { font-size: 7.5pt; } }
    `];constructor(){super(),this._width=new lt(this,cf)}render(){let{ports:e,result:t}=this;if(e.length>24)return o`<p class="quiet">More than ${24} ports are not drawn; the list below has every pair.</p>`;let n=Jo(e.length,t.pairs.map(a=>a.ports),this._width.pixels);return o`<svg viewBox="0 0 ${this._width.pixels} ${n.height}" role="img"
      aria-label=${el(e.length,t)}>
        ${n.lines.map(({path:a},i)=>P`<g ?data-added=${this._added(i)} ?data-apart=${this._apart(i)}><path class="line"
              d=${a}></path></g>`)}
        ${n.lines.map(({mark:a},i)=>this._mark(a,i))}
        ${n.ports.map((a,i)=>this._port(a,i))}
      </svg>
      <p class="quiet legend">On a line: how many adapters; 0, they mate as they are. Thick: some of them are to be
        added. Dashed, “no”: can’t be joined.${t.pairs.some(({trap:a})=>a)?" “!”: looks as if it fitted without, and must not be tried.":u}</p>`}_apart(e){return this.result.pairs[e].joined===null}_added(e){let{joined:t,joined_by_owned:n}=this.result.pairs[e];return t!==null&&n===null}_mark({x:e,y:t},n){let a=Qo(this.result.pairs[n]),i=10+7*a.length;return P`<g data-line=${this.result.pairs[n].ports.join("-")} ?data-added=${this._added(n)}
      ?data-apart=${this._apart(n)}>
      <rect class="plate" x=${e-i/2} y=${t-9} width=${i} height="18" rx="5"></rect>
      <text class="mark" x=${e} y=${t+4}>${a}</text>
    </g>`}_port({x:e,y:t,anchor:n,label:a},i){let{family:r,gender:l}=this.ports[i];return P`<g>
      <circle class="dot" cx=${e} cy=${t} r="9"></circle>
      <text class="at" x=${e} y=${t+3.5}>${i+1}</text>
      <text x=${e+a.x} y=${t+a.y} text-anchor=${n}>${ff(this.names[i])}</text>
      <text class="end" x=${e+a.x} y=${t+a.y+13}
        text-anchor=${n}>${ye(this.vocabulary.lists.families,r,l)}</text>
    </g>`}};customElements.define("jw-kit-graph",sa);var nl=(s,e,t)=>`${s} ${s===1?e:t}`;function al({added:s,gap:e,optimal:t,joined:n}){if(s===0)return n===0?"No pair can be joined.":"Carry what you own: nothing to add.";let a=`Carry ${nl(s,"more adapter","more adapters")}`;return t?`${a}; proven smallest.`:`${a}; at most ${e} more than the best possible.`}function na({joints:s},[e,t],n){let a=(r,l)=>ye(n,r[`${l}_family`],r[`${l}_gender`]),i=s.slice(1).map((r,l)=>`${a(s[l],"other")}/${a(r,"one")} adapter`);return[`${e}, ${a(s[0],"one")}`,...i,`${a(s.at(-1),"other")}, ${t}`].join(" – ")}var aa=({frequency_hz:s,power_w:e})=>`${O(s)}, ${T(e)}`,ia=({loss_db:s})=>`loses ${A(s)}`,il=({joints:s})=>[...new Set(s.flatMap(({notes:e})=>e))],uf=(s,e)=>JSON.stringify(s.adapters)===JSON.stringify(e.adapters);function rl({joined:s,joined_by_owned:e},t,n){return s?e?s.adapters.length===0?"Needs no adapter.":uf(s,e)?"With what you own already.":`With what you own alone: ${na(e,t,n)}, ${ia(e)}.`:"Not with what you own alone.":""}function ol({pairs:s}){let e=s.filter(({joined_by_owned:n})=>n).map(({ports:n})=>Te(n));return e.length===0?"With what you own alone no pair can be joined.":e.length===s.length?"With what you own alone every pair can be joined.":`With what you own alone ${`${e.length} of ${nl(s.length,"pair","pairs")}`} can be joined: ${e.join(", ")}.`}function ll({pairs:s}){let e=new Map;for(let{trap:t,ports:n}of s)t&&e.set(t,[...e.get(t)??[],n]);return[...e].map(([t,n])=>({sentence:t,pairs:n}))}var dl=({ports:s},{pairs:e})=>{let t=new Set(e.flatMap(n=>n.ports));return s.map((n,a)=>a).filter(n=>!t.has(n))};var ra=class extends p({pairs:f(d),names:f(d)},v){static styles=[g,z(L),m`
      ol { list-style: none; margin: 0; padding: 0; }
      li {
        display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 1px 10px; padding: 7px 0;
        border-bottom: 1px solid var(--line); align-items: start; break-inside: avoid;
      }
      li > :not(h3, .chip) { grid-column: 1 / -1; }
      h3 { font-size: 0.95rem; }
      p { font-size: 0.88rem; }
      .chip {
        padding: 3px 6px; min-width: 4.8em; border-radius: 6px; text-align: center; font-weight: 700;
        font-size: 0.85rem; white-space: nowrap;
      }
      .chip.none { background: var(--refused); color: var(--refused-ink); font-weight: 500; }
      .mind { padding-left: 10px; border-left: 3px solid var(--alarm); }
      @media print {
        li { padding: 0.8mm 0; }
        h3 { font-size: 8.5pt; }
        p { font-size: 7.5pt; }
        .chip { padding: 0 4px; font-size: 7.5pt; }
      }
    `];render(){return o`<ol>${this.pairs.map(e=>this._pair(e))}</ol>`}_pair(e){let{joined:t,ports:n,sentence:a,trap:i}=e,{families:r}=this.vocabulary.lists,l=n.map(b=>this.names[b]),c=t?`${aa(e)}: ${ia(t)}`:aa(e),h=rl(e,l,r);return o`<li data-pair=${n.join("-")}>
      <h3>${ks(n,this.names)}</h3>
      ${t?o`<span class="chip" data-step=${R(t.margin_db)}>${S(t.margin_db)} dB</span>`:o`<span class="chip none">no</span>`}
      <p class="chain">${t?na(t,l,r):a}</p>
      <p class="quiet">${[c,h].filter(Boolean).join(". ")}</p>
      ${i?o`<p class="mind">As they are: ${i}</p>`:u}
      ${t?il(t).map(b=>o`<p class="mind">${b}</p>`):u}
    </li>`}};customElements.define("jw-kit-joins",ra);var oa=class extends p({result:f(d),answered:f(d),names:f(d)}){static styles=[g,j,m`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; }
      ul { padding-left: 1.1em; font-size: 0.9rem; }
      b { white-space: nowrap; }
      @media print {
        :host { display: block; }
        .panel { margin-bottom: 2mm; }
        .long { break-inside: auto; }
        ul { font-size: 8.5pt; }
      }
    `];render(){let{answered:e,names:t,result:n}=this,a=ll(n);return o`<section class="panel" id="graph"><h2>Ports and pairs</h2><jw-kit-graph .result=${n}
      .ports=${e.ports} .names=${t}></jw-kit-graph></section>
      ${a.length>0?o`<section class="panel" id="traps"><h2>Looks as if it fitted <small>and must not be tried</small></h2>
            <ul>${a.map(({sentence:i,pairs:r})=>o`<li><b>${r.map(Te).join(", ")}</b> ${i}</li>`)}</ul></section>`:u}
      <section class="panel long" id="pairs"><h2>Pair by pair <small>with the smallest margin of its
      joints</small></h2><jw-kit-joins .pairs=${n.pairs} .names=${t}></jw-kit-joins></section>
      <jw-cautions .cautions=${n.cautions}></jw-cautions>`}};customElements.define("jw-kit-answer",oa);var hf={add:"to add",own:"you own it"},la=class extends p({rows:f(d)}){static styles=[g,I,m`
      .tick { width: 1px; }
      .tick i {
        display: inline-block; width: 0.95em; height: 0.95em; border: 1.5px solid var(--ink); border-radius: 2px;
        vertical-align: -0.15em;
      }
      .pairs { overflow-wrap: anywhere; }
      @media (max-width: 480px) { .known { display: none; } }
    `];render(){return this.rows.length===0?o`<p>No adapter is needed.</p>`:o`<table class="plain">
      <thead><tr><td></td><th scope="col">Adapter</th><th scope="col" class="number">How many</th><th
        scope="col">From</th><th scope="col">For the pairs</th><th scope="col"
        class="known">Known from</th></tr></thead>
      <tbody>${this.rows.map(e=>o`<tr data-from=${e.from}><td class="tick"><i aria-hidden="true"></i></td><th
          scope="row">${e.what}${G(e.pack)}</th>
          <td class="number">${e.count}</td><td>${hf[e.from]}</td><td
            class="pairs">${e.pairs.map(Te).join(", ")}</td><td class="known">${e.kind}</td></tr>`)}</tbody>
    </table>`}};customElements.define("jw-kit-packing",la);var da=({one_family:s,one_gender:e,other_family:t,other_gender:n})=>[`${s} ${e}`,`${t} ${n}`].sort().join(" / "),cl=({joined:s},e)=>(s?.adapters??[]).filter(t=>da(t)===e).length;function mf(s){let e=new Map;for(let t of s){let n=da(t);e.set(n,{...t,count:(e.get(n)?.count??0)+t.count})}return e}function Ss(s,e,t){let n=(c,h)=>ye(t,c[`${h}_family`],c[`${h}_gender`]),a=c=>`${n(c,"one")} to ${n(c,"other")}`,i=c=>s.pairs.filter(h=>cl(h,c)>0).map(({ports:h})=>h),r=s.adapters.map(c=>({...c,what:c.name,from:"add",pairs:i(da(c))})),l=[...mf(e.owned??[])].map(([c,h])=>{let b=Math.max(0,...s.pairs.map(_=>cl(_,c)));return{...h,what:a(h),count:Math.min(h.count,b),from:"own",pairs:i(c),kind:""}});return[...r,...l.filter(({count:c})=>c>0)]}var pf=[["adapter",s=>s.what],["one_family",s=>s.one_family],["one_gender",s=>s.one_gender],["other_family",s=>s.other_family],["other_gender",s=>s.other_gender],["count",s=>s.count],["from",s=>s.from],["joins",s=>s.pairs.map(Te).join(" ")],["known_from",s=>s.kind]],fl=s=>Ae(pf,s);var ca=class extends p({result:f(d),answered:f(d),names:f(d),outdated:{type:String},searching:{type:Boolean}},v){static styles=[g,j,m`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; }
      #proof { font-size: 1.15rem; font-weight: 700; line-height: 1.3; }
      .outdated {
        padding: 8px 12px; margin-top: 8px; background: var(--alarm-wash); border: 1px solid var(--alarm);
        border-radius: var(--round);
      }
      .longer { display: flex; gap: 8px; align-items: center; margin: 6px 0; }
      #longer { flex: none; }
      @media print {
        :host { display: block; }
        .panel { margin-bottom: 2mm; }
        #proof { font-size: 12pt; }
        p { font-size: 8.5pt; }
      }
    `];render(){let{answered:e,names:t,result:n}=this,a=dl(e,n);return o`<section class="panel">
        <div role="status"><p id="proof">${al(n)}</p><p id="verdict">${n.verdict}</p></div>
        ${this._longer(e,n)}
        <p id="alone">${ol(n)}</p>
        ${a.length>0?o`<p class="quiet">In no pair: ${a.map(i=>`${i+1} ${t[i]}`).join(", ")}.</p>`:u}
        ${this.outdated?o`<p class="outdated" role="alert">${this.outdated}</p>`:u}
      </section>
      <section class="panel" id="packing"><h2>Packing list</h2><jw-kit-packing
        .rows=${Ss(n,e,this.vocabulary.lists.families)}></jw-kit-packing></section>`}_longer({search:e},{optimal:t}){if(t||e==="thorough")return u;let n=this.searching?"looking for a smaller kit, in this browser":"in this browser, two minutes at most";return o`<p class="longer noprint">
      <button id="longer" ?disabled=${this.searching}
        @click=${()=>x(this,"jw-kit-search")}>Search for longer</button>
      <small role="status">${n}</small>
    </p>`}};customElements.define("jw-kit-verdict",ca);var ul=(s,e,t)=>s.map((n,a)=>a===e?t:n),ha=([s,e])=>s<e?[s,e]:[e,s],hl=([s,e],[t,n])=>s-t||e-n,gf=s=>Array.from({length:s},(e,t)=>Array.from({length:s-t-1},(n,a)=>[t,t+1+a])).flat(),Es=({pairs:s,ports:e})=>s??gf(e.length);function fa(s,e){let t=s.ports.map((i,r)=>e.flatMap((l,c)=>l===r?[c]:[])),n=e.map(i=>s.ports[i]);if(!s.pairs)return{...s,ports:n};let a=s.pairs.flatMap(([i,r])=>t[i].flatMap(l=>t[r].map(c=>ha([l,c]))));return{...s,ports:n,pairs:a.sort(hl)}}var ua=({ports:s})=>s.map((e,t)=>t),bf=(s,e)=>s>=0&&s<e.length,_f={set:(s,{at:e,changes:t})=>({...s,ports:ul(s.ports,e,Be({...s.ports[e],...t}))}),add:(s,{port:e},{ports:t})=>s.ports.length<t.most?{...s,ports:[...s.ports,e]}:s,duplicate:(s,{at:e},{ports:t})=>s.ports.length<t.most?fa(s,ua(s).toSpliced(e+1,0,e)):s,remove:(s,{at:e},{ports:t})=>s.ports.length>t.least?fa(s,ua(s).toSpliced(e,1)):s,move:(s,{at:e,to:t})=>e!==t&&bf(t,s.ports)?fa(s,ua(s).toSpliced(e,1).toSpliced(t,0,e)):s,pairs:({pairs:s,...e},{pairs:t})=>t?{...e,pairs:t}:e,join:(s,{pair:e,joined:t})=>{let n=ha(e),a=Es(s).map(ha).filter(([i,r])=>i!==n[0]||r!==n[1]);return{...s,pairs:(t?[...a,n]:a).sort(hl)}},own:(s,{at:e,changes:t})=>({...s,owned:ul(s.owned,e,{...s.owned[e],...t})}),acquire:(s,{adapter:e},{owned:t})=>(s.owned??[]).length<t.most?{...s,owned:[...s.owned??[],e]}:s,discard:(s,{at:e})=>({...s,owned:s.owned.toSpliced(e,1)}),limit:(s,{changes:e})=>Be({...s,...e}),replace:(s,{request:e})=>e},ml=(s,e,t)=>_f[e.kind](s,e,t);var ie=(s,e,t,n,a)=>({name:s,family:e,gender:t,highest_frequency_hz:n*1e6,power_w:a}),ma={ports:[ie("Transceiver","uhf","jack",54,100),ie("Tuner","uhf","jack",54,100),ie("Dipole feed line","uhf","plug",30,100),ie("Dummy load","n","jack",450,100),ie("Analyser","sma","jack",450,0),ie("Handheld","sma","plug",450,5),ie("Vertical","n","jack",450,50),ie("Link antenna","rp_sma","plug",2450,0),ie("Patch lead","bnc","plug",450,50),ie("Receive loop","f","plug",30,0)],pairs:[[0,1],[0,2],[0,3],[1,2],[2,4],[3,5],[3,8],[4,6],[4,7],[4,8],[4,9],[5,6],[5,8]],owned:[{one_family:"uhf",one_gender:"plug",other_family:"bnc",other_gender:"jack",count:1},{one_family:"n",one_gender:"plug",other_family:"bnc",other_gender:"jack",count:1}]},pl=ie("","n","jack",54,100),gl={one_family:"n",one_gender:"plug",other_family:"uhf",other_gender:"jack",count:1};var wf=["one_family","one_gender","other_family","other_gender","count"],pa=class extends p({owned:f(d),refused:f(d)},v){static styles=[g,m`
      ul { list-style: none; margin: 0; padding: 0; }
      li { padding: 6px 0; border-bottom: 1px solid var(--line); }
      .fields { display: grid; grid-template-columns: 1fr 1fr; gap: 0 12px; align-items: end; }
      .fields > button { justify-self: start; margin-bottom: 1.5rem; }
      button { font-size: 0.85rem; }
      #acquire { margin-top: 8px; }
    `];render(){let{owned:e,refused:t}=this,{most:n}=this.vocabulary.fields.kit.owned;return o`<ul>${e.map((a,i)=>this._row(a,i,t?.at===i?t:void 0))}</ul>
      <button id="acquire" ?disabled=${e.length>=n}
        @click=${()=>x(this,"jw-kit-edit",{kind:"acquire",adapter:gl})}>Add an adapter you
        own</button>`}_row(e,t,n){let a=i=>q(this.vocabulary,`owned.${i}`,this.vocabulary.valueOf(e,`owned.${i}`),n?.field===i?n.message:"");return o`<li><div class="fields" role="group" aria-label="Adapter ${t+1}"
      @jw-change=${i=>this._changed(i,t)}>
      ${wf.map(a)}
      <button aria-label="Remove adapter ${t+1}" @click=${()=>this._discard(t)}>Remove</button>
    </div></li>`}_changed(e,t){e.stopPropagation(),e.detail.live||x(this,"jw-kit-edit",{kind:"own",at:t,changes:W(e)})}async _discard(e){x(this,"jw-kit-edit",{kind:"discard",at:e}),await Promise.resolve(),await this.updateComplete;let t=this.renderRoot.querySelectorAll("li button");(t[Math.min(e,t.length-1)]??H(this.renderRoot,"#acquire")).focus()}};customElements.define("jw-kit-owned",pa);var xf=150,yf=44,ga=class extends p({request:f(d),names:f(d),refused:f(d)}){static styles=[g,m`
      .every {
        display: flex; gap: 10px; align-items: center; min-height: var(--target); font-weight: 600; font-size: 0.9rem;
      }
      input { width: 22px; height: 22px; margin: 0; }
      .box { display: grid; place-items: center; min-width: var(--target); min-height: var(--target); }
      table { border-collapse: collapse; font-size: 0.85rem; }
      td { padding: 0; border: 1px solid var(--line); }
      th { font-weight: 600; padding: 0 6px 0 0; text-align: left; }
      thead th { padding: 0; text-align: center; }
      tbody th { max-width: 130px; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
      .empty { border: 0; }
      td:has(:checked) { background: var(--accent-wash); }
      fieldset { margin: 0 0 6px; padding: 0 0 4px; border: 0; border-bottom: 1px solid var(--line); min-width: 0; }
      legend { font-size: 0.85rem; font-weight: 600; padding: 0; }
      fieldset div { display: grid; grid-template-columns: repeat(auto-fill, minmax(118px, 1fr)); gap: 0 8px; }
      fieldset label {
        display: flex; gap: 8px; align-items: center; min-height: var(--target); font-size: 0.85rem;
        overflow-wrap: anywhere;
      }
      .acts { display: flex; gap: 6px; margin-top: 8px; }
      .acts button { font-size: 0.85rem; }
    `];constructor(){super(),this._width=new lt(this,0)}render(){let{names:e,request:t,refused:n}=this,a=!t.pairs,i=new Set(Es(t).map(([l,c])=>`${Math.min(l,c)}-${Math.max(l,c)}`)),r=this._width.pixels>=xf+yf*(e.length-1);return o`<label class="every"><input id="every" type="checkbox" .checked=${a}
      aria-invalid=${n?"true":"false"}
        @change=${({target:l})=>this._pairs(l.checked?void 0:Es(t))}> Every two ports</label>
      ${n?o`<p class="error" role="alert">${n.message}</p>`:u}
      ${a?u:r?this._matrix(i):this._list(i)}
      ${a?u:o`<div class="acts"><button id="none" ?disabled=${i.size===0}
            @click=${()=>this._pairs([])}>Untick all</button></div>`}`}_matrix(e){let{names:t}=this,n=t.map((a,i)=>i).slice(1);return o`<table>
      <caption class="unseen">Which ports must join</caption>
      <thead><tr><td class="empty"></td>${n.map(a=>o`<th scope="col" title=${t[a]}>${a+1}</th>`)}</tr></thead>
      <tbody>${t.slice(0,-1).map((a,i)=>o`<tr><th scope="row" title=${a}>${i+1} ${a}</th>
          ${n.map(r=>r>i?o`<td><label class="box">${this._box(i,r,e)}</label></td>`:o`<td class="empty"></td>`)}</tr>`)}</tbody>
    </table>`}_list(e){let{names:t}=this;return t.slice(0,-1).map((n,a)=>o`<fieldset><legend>${a+1} ${n} joins</legend><div>
        ${t.map((i,r)=>r>a?o`<label>${this._box(a,r,e)} ${r+1} ${i}</label>`:u)}
      </div></fieldset>`)}_box(e,t,n){let a=`${e}-${t}`;return o`<input type="checkbox" data-pair=${a} aria-label=${ks([e,t],this.names)}
      .checked=${n.has(a)}
      @change=${({target:i})=>x(this,"jw-kit-edit",{kind:"join",pair:[e,t],joined:i.checked})}>`}_pairs(e){x(this,"jw-kit-edit",{kind:"pairs",pairs:e})}};customElements.define("jw-kit-pairs",ga);var $f=["name","family","gender","highest_frequency_hz","power_w","impedance_ohm"],ba=class extends p({port:f(d),at:{type:Number},count:{type:Number},least:{type:Number},most:{type:Number},open:{type:Boolean},refused:f(d)},v){static styles=[g,m`
      article { background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      #toggle {
        display: grid; grid-template-columns: 1.6em minmax(0, 1fr) auto; gap: 0 8px; align-items: center; width: 100%;
        min-height: 48px;
        padding: 3px 10px; border: 0; background: none; color: inherit; text-align: left;
      }
      #toggle:hover .name { color: var(--accent); }
      .at { color: var(--soft); text-align: right; font-size: 0.85rem; }
      .name { display: block; font-weight: 600; overflow-wrap: anywhere; }
      .sub, .end { color: var(--soft); font-size: 0.8rem; line-height: 1.25; }
      .sub { display: block; }
      .end { white-space: nowrap; }
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: end;
        padding: 6px 12px 2px; background: var(--sunk);
      }
      .acts {
        display: flex; flex-wrap: wrap; gap: 6px; padding: 4px 12px 10px; background: var(--sunk);
        border-radius: 0 0 var(--round) var(--round);
      }
      .acts button { font-size: 0.85rem; padding: 0 11px; }
    `];render(){let{at:e,port:t,refused:n}=this,a=Qn(this.vocabulary.lists.families,t);return o`<article aria-label="Port ${e+1}, ${a}">
      <button id="toggle" aria-expanded=${this.open} @click=${()=>x(this,"jw-kit-toggle",{at:e})}>
        <span class="at">${e+1}</span>
        <span><span class="name">${a}</span>
          <span class="sub">${n?o`<span class="error">needs a correction</span>`:Yo(t)}</span></span>
        <span class="end">${ye(this.vocabulary.lists.families,t.family,t.gender)}</span>
      </button>
      ${this.open?this._form():u}
    </article>`}_form(){let{at:e,count:t}=this,n=(a,i,r,l)=>o`<button id=${a} ?disabled=${r}
        @click=${()=>x(this,"jw-kit-edit",{at:e,...l})}>${i}</button>`;return o`<div class="fields" @jw-change=${this._changed}>
        ${$f.map(a=>this._field(a))}
      </div>
      <div class="acts">
        ${n("up","Up",e===0,{kind:"move",to:e-1})}
        ${n("down","Down",e===t-1,{kind:"move",to:e+1})}
        ${n("duplicate","Duplicate",t>=this.most,{kind:"duplicate"})}
        ${n("remove","Remove",t<=this.least,{kind:"remove"})}
      </div>`}_field(e){let{port:t,refused:n}=this,a=`port.${e}`,i=n?.field===e?n.message:"";return q(this.vocabulary,a,this.vocabulary.valueOf(t,a),i)}get focused(){return this.shadowRoot?.activeElement?.id??""}focusOn(e){let t=e!==""&&this.renderRoot.querySelector(`#${e}:not(:disabled)`)!==null;H(this.renderRoot,t?`#${e}`:"#toggle").focus()}_changed(e){e.stopPropagation(),e.detail.live||x(this,"jw-kit-edit",{kind:"set",at:this.at,changes:W(e)})}};customElements.define("jw-kit-port",ba);var _a=class extends p({ports:f(d),refused:f(d),_open:w(d)},v){static styles=[g,m`
      ol { list-style: none; margin: 0; padding: 0; display: grid; gap: 6px; }
      #add { margin-top: 8px; font-size: 0.85rem; }
    `];constructor(){super(),this._open=-1}willUpdate(e){let{refused:t}=this,n=t?.message===e.get("refused")?.message;e.has("refused")&&t&&!n&&(this._open=t.at??-1)}render(){let{ports:e,refused:t}=this,{least:n,most:a}=this.vocabulary.fields.kit.ports;return o`<ol @jw-kit-toggle=${this._toggled} @jw-kit-edit=${this._edited} @keydown=${this._key}>
        ${e.map((i,r)=>o`<li><jw-kit-port .port=${i} .at=${r} .count=${e.length} .least=${n} .most=${a}
            .open=${r===this._open}
            .refused=${t?.at===r?t:void 0}></jw-kit-port></li>`)}
      </ol>
      <button id="add" ?disabled=${e.length>=a} @click=${this._add}>Add a port</button>`}_toggled({detail:{at:e}}){this._open=this._open===e?-1:e}async _edited({detail:e,target:t}){let{at:n,kind:a}=e,i={move:e.to,duplicate:n+1,remove:Math.max(n-1,0)}[a];if(i===void 0)return;let{focused:r}=t;this._open===n&&(this._open=a==="remove"?-1:i),await this._focus(i,a==="remove"?"toggle":r)}async _focus(e,t){await Promise.resolve(),await this.updateComplete;let a=this.renderRoot.querySelectorAll("jw-kit-port")[e];await a?.updateComplete,a?.focusOn(t)}_key(e){let t={ArrowUp:-1,ArrowDown:1}[e.key],n=e.target.closest("jw-kit-port");if(!e.altKey||t===void 0||!n)return;e.preventDefault();let a=n.at+t;a>=0&&a<this.ports.length&&x(n,"jw-kit-edit",{kind:"move",at:n.at,to:a})}_add(){this._open=this.ports.length,x(this,"jw-kit-edit",{kind:"add",port:pl})}};customElements.define("jw-kit-ports",_a);var vf=["most_in_series","most_loss_db","mode","vswr","return_loss_asked_db","impedance_steps"],wa=["exposure","added_sealing","vibration","matings_per_year","service_life_years","condition","added_resistance_ohm","ambient_temperature_c","solar_irradiance_w_per_m2","altitude_m","cable_dielectric","system_impedance_ohm","transmit_share","on_time_s","off_time_s","power_is","region"],xa=class extends p({request:f(d),names:f(d),refused:f(d),_site:w(d)},v){static styles=[g,j,de,m`:host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; }
    details { border: 0; }
    .ports { padding: 12px 8px; }
    .ports h2 { padding-left: 6px; }`];willUpdate(e){e.has("refused")&&this.refused?.group==="limits"&&wa.includes(this.refused.field)&&(this._site=!0)}render(){let{names:e,request:t}=this,n=i=>this.refused?.group===i?this.refused:void 0,a=wa.filter(i=>i in t).length;return o`<section class="panel ports"><h2>Ports <small>of your gear, and the ends of its leads</small></h2>
        <jw-kit-ports .ports=${t.ports} .refused=${n("ports")}></jw-kit-ports></section>
      <section class="panel"><h2>Which must join <small>one pair at a time</small></h2>
        <jw-kit-pairs .request=${t} .names=${e} .refused=${n("pairs")}></jw-kit-pairs></section>
      <section class="panel"><h2>Adapters you own</h2>
        <jw-kit-owned .owned=${t.owned??[]} .refused=${n("owned")}></jw-kit-owned></section>
      <section class="panel"><h2>Limits</h2>
        <div class="fields" @jw-change=${this._changed}>${vf.map(i=>this._field(i))}</div>
        <details ?open=${this._site} @toggle=${({target:i})=>this._site=i.open}>
          <summary>More about station and site${a>0?` (${a} set)`:""}</summary>
          ${this._site?o`<div class="fields" @jw-change=${this._changed}>${wa.map(i=>this._field(i))}</div>`:u}
        </details></section>`}_field(e){let{refused:t,request:n}=this,a=t?.group==="limits"&&t.field===e?t.message:"";return q(this.vocabulary,`kit.${e}`,this.vocabulary.valueOf(n,`kit.${e}`),a)}_changed(e){e.stopPropagation(),e.detail.live||x(this,"jw-kit-edit",{kind:"limit",changes:W(e)})}};customElements.define("jw-kit-form",xa);function kf(s,e,t){Q(s,e,2,2,"ports").find(i=>!Number.isInteger(i)||i<0||i>=t)!==void 0&&B(s,e,`numbers of ports, 0 to ${t-1}`)}function js(s,e){let{ports:t,owned:n,pairs:a,...i}=e.kit;return V("kit",s),Q("ports",s.ports,t.least,t.most,"ports").forEach((r,l)=>{ue(`ports[${l}]`,V(`ports[${l}]`,r),e.port)}),s.owned!==void 0&&Q("owned",s.owned,n.least,n.most,"adapters").forEach((r,l)=>{ue(`owned[${l}]`,V(`owned[${l}]`,r),e.owned)}),s.pairs!==void 0&&Q("pairs",s.pairs,a.least,a.most,"pairs").forEach((r,l)=>kf(`pairs[${l}]`,r,s.ports.length)),ue("",s,i,["ports","owned","pairs"]),s}var Sf={key:"jointwise-kit",blocked:"This browser keeps nothing for the page: your kit ends when it is closed. Copy its link to keep it.",full:"This browser has no room for your kit: the latest changes are not kept. Copy its link to keep it.",spoilt:"The kit kept in this browser could not be read and was set aside. Save it as a file to look for what is left."},bl=new fe(Sf,js);var xl=["name","family","gender","highest_frequency_hz","power_w","impedance_ohm"],yl=["one_family","one_gender","other_family","other_gender","count"],_l=(s,e)=>{let t=s.map(n=>e[n]??null);return t.slice(0,t.findLastIndex(n=>n!==null)+1)},wl=(s,e)=>Object.fromEntries(s.map((t,n)=>[t,e[n]??null]).filter(([,t])=>t!==null)),Ef=({ports:s,owned:e,...t})=>({...t,ports:s.map(n=>_l(xl,n)),...e?.length>0&&{owned:e.map(n=>_l(yl,n))}}),jf=({ports:s,owned:e,...t})=>({...t,ports:s.map(n=>wl(xl,n)),...e&&{owned:e.map(n=>wl(yl,n))}}),Pt=s=>ys("view=kit","kit",Ef(s));function $l(s,e){let{document:t,problem:n}=$s(s,{key:"kit",names:["view"],unfolded:jf,read:a=>js(a,e),what:"kit",instead:"Your own is shown instead."});return{request:t,problem:n}}function Af(s){let e=s?.field??"",t=/^(ports|owned)\[(\d+)\](?:\.(\w+))?/.exec(e);return t?{group:t[1],at:Number(t[2]),field:t[3]??""}:/^pairs\b/.test(e)?{group:"pairs",field:""}:{group:e===""?"":"limits",field:e}}var Of={ports:"port",owned:"owned",limits:"kit"};function vl(s,e,t){if(!s)return;let n=Af(s),{at:a=0}=n,i=t(`${Of[n.group]}.${n.field}`)??n.field,r={ports:`Port ${a+1}, ${e[a]}: ${i}`,owned:`Adapter ${a+1}: ${i}`,limits:i}[n.group];return{...n,message:le(s,r)}}var Tf="This kit is too long for a link; the browser keeps it, and the packing list can be saved as CSV.",Cf={kit:!0},qt=class extends p({_said:w(d)},Y){static view="kit";static styles=[g,ce,m`
      .onpaper { display: none; }
      @media screen and (max-width: 1179px) {
        .answer { display: contents; }
        jw-kit-verdict, .waiting { order: -1; }
        .bar, .trouble { order: -2; }
      }
      @media (min-width: 1180px) { main { grid-template-columns: minmax(400px, 32%) minmax(0, 1fr); } }
      @media print {
        .answer { display: block; }
        .onpaper { display: block; font-size: 8pt; margin-bottom: 2mm; }
        h2.onpaper { font-size: 13pt; }
      }
    `];constructor(){super(),this._said="",this._told="",this._isNew=!0,this._kit=this._enquiry("kit"),this._document=d,this._request=this._settled=d}_begin(){this._document=new ot(bl,()=>localStorage,this.vocabulary.fields,ma),this._request=this._settled=this._document.present}render(){let{answered:e,error:t,result:n}=this._kit,a=this._document.present,i=ea(this.vocabulary.lists.families,a.ports),r=vl(t,i,l=>this.vocabulary.labelOf(l));return o`${this._progress(this._kit)}
      <main @jw-kit-edit=${({detail:l})=>this._edit(l)} @jw-kit-search=${this._search}>
        ${this._bar(n,e)}
        ${r?.group===""?o`<p class="trouble" role="alert">${r.message} <button
              @click=${()=>this._ask(!0)}>Try again</button></p>`:u}
        <jw-kit-form class="noprint" .request=${a} .names=${i} .refused=${r}></jw-kit-form>
        ${n?this._answer(n,e,r):o`<p class="waiting ${r?"error":"quiet"}">${r?.message??"The core is at work…"}</p>`}
      </main>
      <p class="unseen" role="status">${this._said}</p>`}_answer(e,t,n){let a=ea(this.vocabulary.lists.families,t.ports),i=n?`Out of date, this is the answer from before the last change. ${n.message}`:"";return o`<div class="answer">
      <h2 class="onpaper">Adapters to carry</h2>
      <p class="onpaper">${this._limits(t)}</p>
      <jw-kit-verdict .result=${e} .answered=${t} .names=${a} .outdated=${i}
        .searching=${this._isSearching}></jw-kit-verdict>
      <jw-kit-answer .result=${e} .answered=${t} .names=${a}></jw-kit-answer>
    </div>`}_bar(e,t){let{canRedo:n,canUndo:a}=this._document,i=()=>M("jointwise-packing-list.csv","text/csv",fl(Ss(e,t,this.vocabulary.lists.families)));return o`<div class="bar" role="group" aria-label="Undo and take along">
      <button id="undo" ?disabled=${!a} @click=${()=>this._turn("undo","Undone.")}>Undo</button>
      <button id="redo" ?disabled=${!n} @click=${()=>this._turn("redo","Done again.")}>Redo</button>
      <button @click=${this._copy}>Copy link</button>
      <button ?disabled=${!e} @click=${i}>CSV</button>
      <button @click=${()=>window.print()}>Print</button>
      <button @click=${()=>this._edit({kind:"replace",request:ma})}>Example</button>
    </div>`}_limits({ports:e,pairs:t,owned:n,...a}){let i=this.vocabulary.first.kit,r={most_in_series:i.most_in_series,most_loss_db:i.most_loss_db,...a},l=Object.entries(r).map(([c,h])=>`${this.vocabulary.labelOf(`kit.${c}`)}: ${this.vocabulary.spoken(`kit.${c}`,h)}`);return[`${e.length} ports`,...l].join(" · ")}get _isSearching(){return this._kit.status==="pending"&&this._asked?.search==="thorough"}_ask(e=!1){let t=this._request,n=this._asked===void 0&&t===this._kit.answered;(e||t!==this._asked&&!n)&&this._kit.askNext(t),this._asked=t}_search(){this._request={...this._document.present,search:"thorough"},this.requestUpdate()}_edit(e){let t=ml(this._document.present,e,this.vocabulary.fields.kit);t!==this._document.present&&(this._document.put(t),this._said=e.kind==="move"?`Moved to place ${e.to+1}.`:"",this._settle())}_turn(e,t){this._document[e](),this._said=t,this._settle()}_settle(){this._document.present!==this._settled&&(this._isSearching&&this._kit.cancel(),this._request=this._settled=this._document.present);let e=`#${Pt(this._document.present).fragment}`;e!==location.hash&&history.replaceState(Cf,"",e),this._tellTrouble(),this.requestUpdate()}_restore(e){let{request:t,problem:n}=$l(e,this.vocabulary.fields);this._notice(n&&{text:n}),t&&(this._isNew||!history.state?.kit)&&this._take(t),this._isNew=!1,this._settle()}_take(e){Pt(e).fragment!==Pt(this._document.present).fragment&&(this._document.put(e),this._notice({text:"The kit of this link is shown; Undo brings back the one before."}))}_tellTrouble(){let{problem:e,spoilt:t}=this._document;if(e===this._told)return;this._told=e;let n=t&&{words:"Save it",run:()=>M("jointwise-kit-unread.txt","text/plain",t)};this._notice(e&&{text:e,action:n})}async _copy(){let{fragment:e,whole:t}=Pt(this._document.present);this._notice(t?await Z(`${location.href.replace(/#.*$/,"")}#${e}`):{text:Tf})}};customElements.define("jw-kit-view",qt);var ya={plug:"plug (has the nut)",jack:"jack"},kl=({families:s})=>({"port.name":{label:"What it is"},"port.family":{label:"Family",entries:s},"port.gender":{label:"Plug or jack",options:ya},"port.highest_frequency_hz":{label:"Used up to",factor:1e6,unit:"MHz"},"port.power_w":{label:"Power, peak envelope"},"port.impedance_ohm":{label:"Impedance, UHF types only"},"owned.one_family":{label:"One end",entries:s},"owned.one_gender":{label:"Plug or jack",options:ya},"owned.other_family":{label:"Other end",entries:s},"owned.other_gender":{label:"Plug or jack",options:ya},"owned.count":{label:"How many"},"kit.most_in_series":{label:"Most adapters in series"},"kit.most_loss_db":{label:"Most loss of a pair"},"kit.impedance_steps":{label:"50 Ω may meet 75 Ω"},"kit.search":{label:"Search",options:{quick:"quick",thorough:"for a minute"}}});var Sl={id:qt.view,label:"Kit",fields:Fo,words:kl,upright:!0,element:({transport:s,stage:e})=>o`<jw-kit-view class="view" .transport=${s} .stage=${e}></jw-kit-view>`};var $a=matchMedia("(min-width: 1280px)"),El=["beforeprint","afterprint"];function zf(){let s=document.activeElement;for(;s?.shadowRoot?.activeElement;)s=s.shadowRoot.activeElement;return s}var va=class extends p({heading:{type:String}}){static styles=[g,m`
      dialog {
        position: fixed; inset: 0; z-index: 20; width: 100vw; height: 100dvh; max-width: none; max-height: none;
        margin: 0; padding: 0; border: 0; overflow: hidden; color: inherit; background: var(--card);
      }
      dialog[open] { display: flex; flex-direction: column; }
      .head {
        display: flex; gap: 12px; align-items: center; padding: 8px 8px 8px 18px; border-bottom: 1px solid var(--line);
      }
      h2:focus { outline: none; }
      h2 { flex: 1; font-size: 1.15rem; line-height: 1.25; }
      .body { flex: 1; overflow: auto; padding: 14px 18px 40px; overscroll-behavior: contain; }
      @media (min-width: 700px) {
        dialog { inset: 0 0 0 auto; width: 600px; border-left: 1px solid var(--edge); box-shadow: 0 0 40px #0005; }
        dialog::backdrop { background: #0006; }
      }
      @media (min-width: 1280px) { dialog { width: var(--sheet); box-shadow: none; } }
      @media print {
        dialog, dialog[open] {
          position: static; display: block; width: auto; height: auto; overflow: visible; border: 0; box-shadow: none;
          break-before: page;
        }
        dialog:not([open]), #close { display: none; }
        .head { padding: 0 0 2mm; }
        .body { overflow: visible; padding: 2mm 0 0; columns: 2 85mm; column-gap: 8mm; }
      }
    `];constructor(){super(),this.heading="",this._printing=!1,this._placed=()=>this._place(),this._printed=({type:e})=>{this._printing=e==="beforeprint",this._place()},this._escaped=e=>{e.key==="Escape"&&this.heading&&this._close(e)}}connectedCallback(){super.connectedCallback(),$a.addEventListener("change",this._placed);for(let e of El)window.addEventListener(e,this._printed);window.addEventListener("keydown",this._escaped)}disconnectedCallback(){super.disconnectedCallback(),$a.removeEventListener("change",this._placed);for(let e of El)window.removeEventListener(e,this._printed);window.removeEventListener("keydown",this._escaped)}render(){return o`<dialog aria-labelledby="heading" @cancel=${this._close}>
      <div class="head">
        <h2 id="heading" tabindex="-1">${this.heading}</h2>
        <button id="close" @click=${this._close}>Close</button>
      </div>
      <div class="body" tabindex="0" role="group" aria-labelledby="heading"><slot></slot></div>
    </dialog>`}updated(e){if(e.has("heading")){if(this.heading==="")return this._closed();e.get("heading")||(this._opener=zf()),this._place(),H(this.renderRoot,".body").scrollTop=0,H(this.renderRoot,"h2").focus()}}get _dialog(){return H(this.renderRoot,"dialog")}_place(){if(this.heading==="")return;let e=$a.matches||this._printing;this._dialog.open&&this._beside===e||(this._beside=e,this._dialog.close(),this._beside?this._dialog.show():this._dialog.showModal())}_closed(){this._dialog.close(),this._opener?.isConnected&&this._opener.focus(),this._opener=void 0}_close(e){e.preventDefault(),this.dispatchEvent(new CustomEvent("jw-close",{bubbles:!0,composed:!0}))}};customElements.define("jw-sheet",va);var As=(s,e)=>s.find(t=>t.id===e)?.name??e;function Rf(s,{cables:e,families:t}){if(s.name)return s.name;switch(s.kind){case"cable":return`${y(s.length_m)} m of ${As(e,s.cable)}`;case"joint":return s.adapter_to?`${As(t,s.family)} to ${As(t,s.adapter_to)}`:As(t,s.family);case"measured":return"Measured part"}return"Part"}var jl=({elements:s},e)=>s.map(t=>Rf(t,e));var Mf={line:!0};function ka(s,e,t){let n=`#${rt(s,e).fragment}`;n!==location.hash&&history[t?"pushState":"replaceState"](Mf,"",n)}function Al(s,e){let t=vs(s,e);return history.state?.line?{...t,line:void 0}:t}var Os=({format:s,version:e,key:t},n)=>({format:s,version:e,[t]:n});function Ts({format:s,version:e,key:t},n,a){let i;try{i=JSON.parse(n)}catch{throw new RangeError(`The file is no JSON; allowed: a file of ${t} exported here.`)}return i?.format!==s&&B("format",i?.format,`"${s}"`),i.version!==e&&B("version",i.version,`${e}`),a(i[t])}var Tl={format:"jointwise lines",version:1,key:"lines"},Cl=s=>Os(Tl,s),zl=(s,e)=>Ts(Tl,s,t=>gs(t,e));var Nf=`This line is too long for a link (over ${1500} characters); export it as a file instead.`,Rl={export:async s=>Xe("jointwise-lines.json",Cl(s.lines)),link:async s=>rt(ne(s),null).whole?Z():{text:Nf},print:async()=>window.print()};async function Ml(s,e){try{return{edit:{kind:"insert",lines:zl(await s.text(),e)}}}catch(t){if(!(t instanceof RangeError))throw t;return{notice:{text:`${s.name} is refused: ${t.message} Nothing was changed.`}}}}var Ce={heat:"heat",voltage:"voltage",match:"mismatch"};function Ll(s,e,t){return s?s.elements[t]===e?t:s.elements.indexOf(e):-1}var Sa=(s,e)=>s.parts.filter(t=>t.element===e),Pf=(s,e)=>s.filter(t=>t[e]!==null).sort((t,n)=>t[e]-n[e])[0];function Nl(s,e){let t=Sa(s,e),n=t.find(r=>r.refused_by),a=Pf(t,"margin_db"),i=t.map(r=>r.loss_db).filter(r=>r!==null);return{margin:n?null:a?.margin_db??null,loss:i.length<t.length?null:i.reduce((r,l)=>r+l,0),refusal:n?.refusal??"",limited:n||!a?"":Ce[a.binding],undecided:t.some(r=>r.undecided),marks:[...new Set(t.flatMap(r=>r.marks))],weakest:s.weakest!==null&&t.includes(s.parts[s.weakest])}}var dt=s=>s.refused_by?"refused":s.margin_db===null?"–":`${S(s.margin_db)} dB`;function Pl(s,e){let t=s.refused_by?`refused: ${s.refusal}`:s.margin_db===null?"no limit known":`margin ${S(s.margin_db)} dB, limited by ${Ce[s.binding]}`,n=e?", the weakest part":"";return`${s.name}: ${t}, loses ${A(s.loss_db)}${n}. Open its derivation`}function ql({bands:[s]}){let[e,,,,t]=s.vswr,n=a=>a===null?"without bound":y(a,3);return`On ${s.column.name} the VSWR at the transmitter is ${n(e)} to ${n(t)} in nine of ten; by the root of the sum of squares ${n(s.likely_vswr)}, at the worst ${n(s.worst_vswr)}.`}var qf={start:66,joint:62,part:86,measured:86,end:74},Wl={least:76,perRootMetre:17},Wf=3,If=6.4;function Hf({kind:s,length_m:e},t){return s!=="cable"?{width:Math.min(qf[s],t),more:0}:{width:Math.min(Wl.least,t),more:Wl.perRootMetre*Math.sqrt(e)}}function Bf(s,e){let t=[],n=0;for(let a of s){let i=Hf(a,e);(t.length===0||i.width>n)&&(t.push([]),n=e),t.at(-1).push({...a,...i}),n-=i.width}return t}function Uf(s,e,t){let n=l=>s.reduce((c,h)=>c+h[l],0),a=n("more");if(a===0)return s;let i=(e-n("width"))/a,r=t?Math.min(i,Wf):i;return s.map(l=>({...l,width:l.width+r*l.more}))}function Il(s,e){let t=Bf(s,e);return{items:t.flatMap((a,i)=>{let r=0;return Uf(a,e,i===t.length-1).map(l=>{let c={...l,x:r,y:i*128,row:i};return r+=l.width,c})}),rows:t.length,height:t.length*128}}function Hl(s,e){let t=Math.max(Math.floor(e/If),4),n=i=>i.length>t?`${i.slice(0,t-1)}…`:i;if(s.length<=t)return[s];let a=s.lastIndexOf(" ",t);return a<=0?[n(s)]:[s.slice(0,a),n(s.slice(a+1))]}var Ff=720,Ul=56,Ea=class extends p({result:f(d),elements:f(d),open:{type:String},_width:w(d)}){static styles=[g,m`
      svg { display: block; width: 100%; height: auto; overflow: visible; }
      text { fill: var(--ink); font-size: 12px; text-anchor: middle; }
      .name { font-size: 11.5px; }
      .soft { fill: var(--soft); font-size: 11px; }
      .margin { font-weight: 700; font-size: 12.5px; }
      .wire { fill: none; stroke: var(--edge); stroke-width: 2.5; }
      .turn { stroke-dasharray: 2 4; stroke-width: 2; }
      .body { stroke: var(--ink); stroke-width: 1.2; }
      .own { fill: var(--card); stroke: var(--ink); stroke-width: 1.5; }
      .hit { fill: transparent; rx: 8px; }
      .part { cursor: pointer; outline: none; }
      .part:hover .hit { fill: color-mix(in srgb, var(--accent) 8%, transparent); }
      .part:focus-visible .hit { stroke: var(--accent); stroke-width: 3; }
      .part[data-open] .hit { fill: var(--accent-wash); }
      .weakest { fill: none; stroke: var(--accent); stroke-width: 3; }
      .weak { fill: var(--accent); font-weight: 700; font-size: 11px; }
      .refused { fill: var(--refused); }
    `];constructor(){super(),this._width=Ff,this._sizes=new ResizeObserver(([{contentRect:e}])=>{e.width>0&&(this._width=Math.round(e.width))})}connectedCallback(){super.connectedCallback(),this._sizes.observe(this)}disconnectedCallback(){super.disconnectedCallback(),this._sizes.disconnect()}render(){let{parts:e}=this.result,t=[{kind:"start"},...e.map(a=>({kind:a.kind,length_m:this.elements[a.element].length_m})),{kind:"end"}],n=Il(t,this._width);return o`<svg viewBox="0 0 ${this._width} ${n.height}" role="group"
      aria-label="The line from the transmitter to the antenna">
      ${n.items.map((a,i)=>this._wire(a,n.items[i+1]))}
      ${n.items.map((a,i)=>this._item(a,e[i-1],i-1))}
    </svg>`}_wire({x:e,y:t,width:n,row:a},i){let r=e+n;if(!i)return u;let[l,c]=[e+n/2,i.x+i.width/2];if(i.row===a)return P`<path class="wire" d="M${l} ${t+56}H${c}"></path>`;let[h,b]=[t+128-1,i.y+56];return P`<path class="wire turn" d="M${l} ${t+56}H${r-3}V${h}H3V${b}H${c}"></path>`}_item(e,t,n){let a=e.x+e.width/2,i=e.y+56;if(e.kind==="start")return this._end(a,e.y,"Transmitter",T(this.result.power_w),Df(a,i));if(e.kind==="end")return this._end(a,e.y,"Antenna",this._delivered(),Gf(a,i));let r=n===this.result.weakest,l=t.margin_db===null||t.refused_by?void 0:R(t.margin_db),[c,h]=l===void 0?["var(--refused)","var(--refused-ink)"]:[`var(--step-${l})`,`var(--step-${l}-ink)`],b=String(t.element)===this.open,_=Hl(`${t.element+1} · ${t.name}`,e.width-6),$=e.y+30-13*(_.length-1),k=()=>x(this,"jw-line-open",{open:String(t.element)});return P`<g class="part" role="button" tabindex="0" data-part=${n} ?data-open=${b}
        @click=${k} @keydown=${C=>["Enter"," "].includes(C.key)&&(C.preventDefault(),k())}>
      <title>${Pl(t,r)}</title>
      <rect class="hit" x=${e.x+1} y=${e.y+2} width=${e.width-2} height=${120} rx="8"></rect>
      ${_.map((C,F)=>P`<text class="name" x=${a} y=${$+13*F}>${C}</text>`)}
      ${this._body(e,a,i,c)}
      ${r?P`<rect class="weakest" x=${e.x+4} y=${i-19} width=${e.width-8} height="60" rx="8"></rect>`:u}
      <rect x=${a-Ul/2} y=${i+17} width=${Ul} height="20" rx="5" style="fill:${c}"></rect>
      <text class="margin" x=${a} y=${i+31} style="fill:${h}">${dt(t).replace(" dB","")}</text>
      <text class="soft" x=${a} y=${i+53}>${A(t.loss_db)}</text>
      ${r?P`<text class="weak" x=${a} y=${i+67}>weakest</text>`:u}
    </g>`}_body(e,t,n,a){let i=`fill:${a}`;if(e.kind==="cable")return P`<rect class="body" style=${i}
        x=${e.x+4} y=${n-6} width=${e.width-8} height="12" rx="6"></rect>`;if(e.kind==="joint")return P`<path class="body" style=${i}
          d="M${t-15} ${n-8}h11v-5h8v5h11v16h-11v5h-8v-5h-11z"></path>
        <path class="body" d="M${t} ${n-13}v26"></path>`;let r=e.kind==="measured"?P`<path class="wire" d="M${t-12} ${n+6}l6 -10l6 7l6 -9l6 6"></path>`:u;return P`<rect class="body" style=${i}
      x=${t-19} y=${n-14} width="38" height="28" rx="3"></rect>${r}`}_end(e,t,n,a,i){return P`<g>
      <text class="name" x=${e} y=${t+30}>${n}</text>${i}
      <text class="margin" x=${e} y=${t+56+31}>${a}</text>
    </g>`}_delivered(){let{delivered_w:e,power_w:t,loss_db:n}=this.result;return t===0?A(n):e===null?"–":E(e,"W",3)}};function Df(s,e){return P`<rect class="own" x=${s-19} y=${e-14} width="38" height="28" rx="4"></rect>
    <path class="wire" d="M${s-9} ${e}q4.5 -11 9 0t9 0"></path>`}function Gf(s,e){return P`<path class="own"
    d="M${s} ${e+12}V${e-4}M${s-14} ${e-20}L${s} ${e-4}L${s+14} ${e-20}Z"></path>`}customElements.define("jw-line-drawing",Ea);var ja=class extends p({result:f(d),outdated:{type:String}}){static styles=[g,z(L),m`
      .verdict { display: flex; gap: 14px; align-items: center; }
      b.chip {
        padding: 10px 12px; border-radius: var(--round); font-size: 1.4rem; line-height: 1; white-space: nowrap;
      }
      b.none { background: var(--refused); color: var(--refused-ink); font-size: 1rem; }
      .facts {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(112px, 1fr)); gap: 8px 14px; margin-top: 12px;
      }
      dt { color: var(--soft); font-size: 0.78rem; }
      dd { font-weight: 650; }
      dd small { display: block; font-weight: 400; line-height: 1.25; color: var(--soft); font-size: 0.78rem; }
      .outdated {
        margin-bottom: 8px; padding: 8px 12px; border: 1px dashed var(--alarm); border-radius: var(--round);
        color: var(--alarm); font-size: 0.9rem;
      }
    `];render(){let{result:e}=this,t=e.undecided?" Sources differ on which side of the limit it lies.":"";return o`${this.outdated?o`<p class="outdated">${this.outdated}</p>`:u}
      <div class="verdict">
        ${e.margin_db===null?o`<b class="chip none">${e.parts.some(n=>n.refused_by)?"refused":"no limit"}</b>`:o`<b class="chip" data-step=${R(e.margin_db)}>${S(e.margin_db)} dB</b>`}
        <p id="verdict" role="status">${e.verdict}${t}</p>
      </div>
      <dl class="facts">
        ${this._facts().map(([n,a,i])=>o`<div><dt>${n}</dt><dd>${a} ${i?o`<small>${i}</small>`:u}</dd></div>`)}
      </dl>`}_facts(){let{result:e}=this,{largest_power_w:t,largest_power_set_by:n}=e,a=n===null?void 0:e.parts[n];return[...e.power_w>0?[["At the antenna",Fl(e.delivered_w),`cautious ${Fl(e.delivered_low_w)}`]]:[],["Loss of the line",A(e.loss_db),e.mismatch_db>0?`${A(e.mismatch_db)} of it reflected at the transmitter`:""],["VSWR at the transmitter",Dl(e.input.vswr),Gl(e.input)],["VSWR at the antenna",Dl(e.antenna.vswr),Gl(e.antenna)],...e.margin_db===null?[]:[["Range of the margin",`${S(e.margin_db)} to ${S(e.margin_high_db)} dB`,""]],["Largest power that holds",t===null?"none":T(He(t,3)),a?`set by ${a.name}`:""],["Looked at",O(e.frequency_hz),e.column.name]]}},Fl=s=>s===null?"–":E(s,"W",3),Dl=s=>s===null?"–":y(s,3);function Gl({resistance_ohm:s,reactance_ohm:e}){return s===null||e===null?"":`${y(s,3)} ${e<0?"−":"+"} j ${y(Math.abs(e),3)} Ω`}customElements.define("jw-line-verdict",ja);var Aa=class extends p({result:f(d),answered:f(d),outdated:{type:String},open:{type:String}}){static styles=[g,j,m`:host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; min-width: 0; }`];render(){let{result:e,answered:t}=this;return o`<section class="panel">
        <h2 class="unseen">Answer</h2><jw-line-verdict .result=${e} .outdated=${this.outdated}></jw-line-verdict>
      </section>
      <section class="panel">
        <h2>The line drawn <small>a tap on a part opens its derivation</small></h2>
        <jw-line-drawing .result=${e} .elements=${t.elements} .open=${this.open}></jw-line-drawing>
        <p class="legend quiet">Under each part its margin in dB, coloured as in the matrix, and what it loses.</p>
      </section>`}};customElements.define("jw-line-answer",Aa);var Oa=new Map;function Cs(s){if(!Oa.has(s)){let e=document.createElement("template");e.innerHTML=s,e.content.querySelector("math")?.setAttribute("display","block"),Oa.set(s,e)}return Oa.get(s).content.cloneNode(!0)}var Vl={alpha:"α",beta:"β",gamma:"γ",Gamma:"Γ",delta:"δ",Delta:"Δ",epsilon:"ε",eps:"ε",eta:"η",theta:"θ",kappa:"κ",lambda:"λ",lamda:"λ",mu:"µ",pi:"π",rho:"ρ",sigma:"σ",tau:"τ",phi:"φ",chi:"χ",psi:"ψ",omega:"ω"};function Kl(s){let[e,...t]=s.split("_");return[Vl[e]??e,t.map(n=>Vl[n]??n).join(", ")]}function It(s){let[e,t]=Kl(s);return o`<var>${e}${t?o`<sub>${t}</sub>`:""}</var>`}function ct(s){for(let e of s)e.scrollWidth>e.clientWidth?e.tabIndex=0:e.removeAttribute("tabindex")}var Ta=class extends p({catalogue:f(d)}){static styles=[g,m`
      article { margin-top: 14px; padding-top: 14px; border-top: 1px solid var(--line); }
      .formula { overflow-x: auto; padding: 8px 0; font-size: 1.1rem; }
      li { padding: 3px 0; font-size: 0.85rem; }
    `];updated(){ct(this.renderRoot.querySelectorAll(".formula"))}render(){let{formulas:e,sources:t}=this.catalogue;return o`<p>
        The margin of a cell is the smallest of three limits: heat, voltage and match. Each number on the page comes
        from the formulas below, and a cell’s derivation shows them with the values put in. A rating with differing
        sources is a range: its cautious end decides.
      </p>
      ${e.map(n=>this._formula(n))}
      <h3>Sources</h3>
      <ul>
        ${t.map(n=>o`<li>${ae(n)} <span class="kind">${n.seen}</span></li>`)}
      </ul>`}_formula(e){let t=this.catalogue.sources.find(({id:n})=>n===e.source);return o`<article data-formula=${e.id}>
      <h3>${e.title}</h3>
      <div class="formula">${Cs(e.mathml)}</div>
      <table class="plain">
        <tbody>
          ${e.symbols.map(n=>o`<tr>
              <td>${It(n.symbol)}</td><td>${n.meaning}</td><td>${n.unit==="1"?"":n.unit}</td>
            </tr>`)}
        </tbody>
      </table>
      <p class="quiet">Valid: ${e.validity}. Source: ${t?ae(t):e.source}.</p>
    </article>`}};customElements.define("jw-methods",Ta);var Ca=class extends p({steps:f(d),catalogue:f(d)}){static styles=[g,I,m`
      ol { list-style: none; margin: 0; padding: 0; }
      li { padding: 10px 0; border-top: 1px solid var(--line); }
      .title { display: flex; flex-wrap: wrap; gap: 0 8px; align-items: baseline; }
      .formula { overflow-x: auto; padding: 6px 0; font-size: 1.05rem; }
      .plain { font-size: 0.8rem; }
      .plain td { border-bottom-style: dotted; }
      .plain td:first-child { white-space: nowrap; }
      .result { margin-top: 4px; font-weight: 650; }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; color: var(--soft); font-size: 0.85rem;
      }
      @media print {
        li { break-inside: avoid; padding: 1mm 0; }
        .formula { overflow: visible; padding: 1px 0; font-size: 0.95rem; }
        .formula[tabindex] { font-size: 0.52rem; }
      }
    `];updated(){ct(this.renderRoot.querySelectorAll(".formula"))}render(){let e=this.steps.filter(t=>t.end==="high");return o`${this._list(this.steps.filter(t=>t.end!=="high"))}
      ${e.length>0?o`<details class="more">
            <summary>The same with the most generous credible figures (${e.length} steps)</summary>
            ${this._list(e)}
          </details>`:u}`}_list(e){return o`<ol>
      ${e.map(t=>this._step(t))}
    </ol>`}_step(e){let t=this.catalogue?.formulas.find(({id:n})=>n===e.formula);return o`<li data-formula=${e.formula}>
      <div class="title">
        <strong>${t?.title??e.formula}</strong>
        ${e.purpose?o`<span class="quiet">${e.purpose}</span>`:u}
      </div>
      ${t?o`<div class="formula">${Cs(t.mathml)}</div>`:u}
      <table class="plain">
        <tbody>
          ${e.inputs.map(n=>this._input(n))}
        </tbody>
      </table>
      <p class="result">${It(e.result.symbol)} = ${E(e.result.value,e.result.unit)}</p>
    </li>`}_input(e){let t=this.catalogue?.sources.find(({id:a})=>a===e.source),n=hs(e.source,this.catalogue?.packs);return o`<tr>
      <td>${It(e.symbol)} = ${E(e.value,e.unit)}</td>
      <td>
        ${e.meaning}
        ${e.kind?o`<span class="kind">${e.kind}</span>`:u}${G(n)}
        ${t?o`<br><span class="quiet">${ae(t)}</span>`:u}
      </td>
    </tr>`}};customElements.define("jw-steps",Ca);var Vf=["heat","voltage","match"],za=class extends p({parts:f(d),steps:f(d),catalogue:f(d)}){static styles=[g,I,z(L),m`
      section { margin-bottom: 18px; }
      .head { display: flex; gap: 12px; align-items: center; margin-bottom: 8px; }
      .chip {
        padding: 8px 10px; border-radius: var(--round); font-weight: 700; font-size: 1.2rem; line-height: 1;
        white-space: nowrap;
      }
      .chip.none { background: var(--refused); color: var(--refused-ink); font-size: 0.95rem; }
      .small { padding: 2px 8px; border-radius: 5px; font-weight: 700; }
      .facts { display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 8px 14px; }
      dt { color: var(--soft); font-size: 0.78rem; }
      dd { font-weight: 600; }
      .note { margin-top: 6px; font-size: 0.88rem; }
      .plain { margin-top: 10px; }
      h3 { margin-bottom: 6px; }
    `];render(){return o`${this.parts.map(e=>this._part(e))}
      <section>
        <h3>Steps</h3>
        ${this._steps()}
      </section>`}_steps(){return this.steps?this.steps.length===0?o`<p class="quiet">
        A measured part has no limits of its own to derive; its loss is what was measured.
      </p>`:o`<jw-steps .steps=${this.steps} .catalogue=${this.catalogue}></jw-steps>`:o`<p class="quiet" role="status">The core is at work…</p>`}_part(e){let t=e.binding?`limited by ${Ce[e.binding]}`:"",n=e.undecided?"; sources differ on which side of the limit it lies":"",a=e.margin_db===null;return o`<section>
      <div class="head">
        <span class=${a?"chip none":"chip"}
          data-step=${a?"none":R(e.margin_db)}>${dt(e)}</span>
        <p><strong>${e.name}</strong>${G(e.pack)} ${t}${n}</p>
      </div>
      <dl class="facts">
        ${this._facts(e).map(([i,r])=>o`<div><dt>${i}</dt><dd>${r}</dd></div>`)}
      </dl>
      ${[e.refusal,...e.marks].filter(Boolean).map(i=>o`<p class="note">${i}</p>`)}
      <table class="plain">
        <thead><tr><th scope="col">Limit</th><th scope="col" class="number">Margin</th></tr></thead>
        <tbody>
          ${Vf.map(i=>this._limit(i,e))}
        </tbody>
      </table>
    </section>`}_limit(e,t){let n=t.margin_by_limit_db[e]??null;return o`<tr data-limit=${e}>
      <th scope="row">${Ce[e]}${e===t.binding?", the smallest":""}</th>
      <td class="number">
        ${n===null?o`<span class="quiet">no limit known</span>`:o`<span class="small" data-step=${R(n)}>${S(n)} dB</span>`}
      </td>
    </tr>`}_facts(e){let t=(a,i,r)=>i===null?E(a,r,3):`${E(a,r,3)} of ${E(i,r,3)}`;return[["Loss as the waves stand",e.loss_db===null?void 0:`${A(e.loss_db)}, ${E(e.lost_w??0,"W",3)}`],["Loss between matched ends",A(e.matched_loss_db)],["Range of the margin",e.margin_db===null?void 0:`${S(e.margin_db)} to ${S(e.margin_high_db)} dB`],["Peak voltage",e.peak_voltage_v===null?void 0:t(e.peak_voltage_v,e.allowed_voltage_v,"V")],["Peak current",e.peak_current_a===null?void 0:E(e.peak_current_a,"A",3)],["Hottest place",e.temperature_c===null?void 0:t(e.temperature_c,e.allowed_temperature_c,"°C")],["VSWR into it",e.vswr===null?void 0:y(e.vswr,3)],["Forward, reflected",e.forward_w===null?void 0:`${E(e.forward_w,"W",3)}, ${E(e.reflected_w,"W",3)}`],["Largest power that holds",e.largest_power_w===null?"none known":T(He(e.largest_power_w,3))],["From the transmitter",`${y(e.distance_m,4)} m`]].filter(([,a])=>a!==void 0)}};customElements.define("jw-line-derivation",za);var Ra=class extends p({element:{type:Number},answered:f(d),result:f(d),current:{type:Boolean},catalogue:f(d),error:f(d)}){static styles=[g];render(){let{catalogue:e,result:t}=this,n=o`<p role="status">${this.error?.message??"The core is at work…"}</p>`;if(this.element===void 0)return e?o`<jw-methods .catalogue=${e}></jw-methods>`:n;if(!t)return n;let a=Sa(t,this.element),i=this.current&&this.answered.explain===this.element?t.steps:void 0;return o`<jw-line-derivation .parts=${a} .steps=${i} .catalogue=${e}></jw-line-derivation>`}};customElements.define("jw-line-detail",Ra);var Yl=8,Ma=class extends p({result:f(d),current:{type:Boolean}}){static styles=[g,m`
      .scroll { overflow-x: auto; }
      .plain td { vertical-align: middle; }
      .plain thead th { white-space: normal; vertical-align: bottom; }
      button { font-size: 0.82rem; padding: 0 9px; }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; color: var(--accent); font-size: 0.9rem;
      }
      .better { font-weight: 700; }
      .worse { color: var(--alarm); }
      small { color: var(--soft); }
      @media (max-width: 480px) { .plain { font-size: 0.8rem; } .plain :is(th, td) { padding-right: 5px; } }
      @media print { button, details { display: none; } }
    `];render(){let{changes:e}=this.result;if(e.length===0)return o`<p class="quiet">No other part of the catalogue passes the gates here.</p>`;let t=e.slice(Yl);return o`<p class="quiet">
        Each row exchanges one part for another that passes the gates; its neighbours stay, so a joint may need the part
        it mates with too.
      </p>
      ${this._table(e.slice(0,Yl))}
      ${t.length>0?o`<details class="more"><summary>${t.length} more</summary>${this._table(t)}</details>`:u}`}_table(e){return o`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Instead of</th><th scope="col">Fit</th><th scope="col" class="number">At the antenna</th>
          <th scope="col" class="number">Smallest margin</th><th><span class="unseen">Take over</span></th>
        </tr>
      </thead>
      <tbody>
        ${e.map(t=>this._row(t))}
      </tbody>
    </table></div>`}_row(e){let t=this.result.parts[e.part];return o`<tr data-part=${e.part} data-to=${e.to}>
      <td>${t.name} <small>${t.element+1}</small></td>
      <td>${e.name}</td>
      <td class="number">${Xl(e.gained_db)}</td>
      <td class="number">${Xl(e.margin_gained_db)}</td>
      <td class="number">
        <button ?disabled=${!this.current} aria-label="Fit ${e.name} instead of ${t.name}"
          @click=${()=>x(this,"jw-line-take",{change:e})}>Fit</button>
      </td>
    </tr>`}};function Xl(s){if(s===null)return"–";if(Math.abs(s)<.01)return"0";let e=Math.abs(s)<.1?`${s<0?"−":"+"}${y(Math.abs(s),1)}`:S(s);return o`<span class=${s>0?"better":"worse"}>${e} dB</span>`}customElements.define("jw-line-changes",Ma);var ee={displayModeBar:!1,responsive:!0,showTips:!1},U={ink:"#16212b",soft:"#51606d",line:"#d9d6cf",band:"#1f5690",accent:"#7a2b66"},Ht=s=>s.replace(/^rgb\((.*)\)$/,"rgba($1, 0.18)").replace(/^#.*$/,"rgba(31, 86, 144, 0.18)");function Zl({cell:s,limit:e,along:t,colours:n=U}){let{curves:a}=s,i=t==="frequency",r=i?a.frequency_hz:a.power_w,l=a[`margin_by_${t}_db`][e.id],c=a[`margin_high_by_${t}_db`][e.id],h=i?s.frequency_hz:s.power_w,b=($,k,C)=>({x:r,y:$,name:k,type:"scatter",mode:"lines",line:{color:n.band,width:2},hovertemplate:`%{y:+.1f} dB at %{x:.4s}${i?"Hz":"W"}<extra>${k}</extra>`,...C}),_=h>0&&e.margin_db!==null;return{data:[b(c,"generous",{line:{color:n.band,width:1,dash:"dot"}}),b(l,"cautious",{fill:"tonexty",fillcolor:Ht(n.band)}),..._?[Kf(h,e.margin_db,n)]:[]],layout:Xf({x:i?"frequency, Hz":"power, W",y:`${e.name.toLowerCase()} margin, dB`,colours:n}),config:ee}}function Jl({cell:s,limit:e,along:t}){let n=t==="frequency"?"at the cell’s power":"at the cell’s frequency";return`${e.name} margin of ${s.family.name} against ${t}, ${n}; the cell is marked`}var Kf=(s,e,t)=>({x:[s],y:[e],name:"this cell",type:"scatter",mode:"markers",cliponaxis:!1,marker:{color:t.accent,size:11,symbol:"diamond"},hovertemplate:"%{y:+.1f} dB<extra>this cell</extra>"}),Yf=260;function te({x:s,y:e,colours:t,height:n=Yf}){let a=i=>({title:{text:i,standoff:8},gridcolor:t.line,linecolor:t.soft,zeroline:!1,fixedrange:!0,automargin:!0});return{height:n,margin:{l:52,r:12,t:10,b:44},font:{color:t.ink,size:12,family:"system-ui, sans-serif"},paper_bgcolor:"rgba(0,0,0,0)",plot_bgcolor:"rgba(0,0,0,0)",xaxis:a(s),yaxis:a(e),showlegend:!1,dragmode:!1,hovermode:"closest"}}var La=s=>({type:"line",xref:"paper",x0:0,x1:1,y0:0,y1:0,line:{color:s.ink,width:1.5}});function Xf({x:s,y:e,colours:t}){let n=te({x:s,y:e,colours:t});return{...n,xaxis:{...n.xaxis,type:"log",exponentformat:"SI",dtick:1},yaxis:{...n.yaxis,tickformat:"+d"},shapes:[La(t)]}}var Ql=matchMedia("(prefers-color-scheme: dark)"),e0=660,Na=class extends p({figure:f(d),label:{type:String},load:f(d),_error:w(d)}){static styles=[g,m`
      figure { height: var(--chart, 260px); position: relative; overflow: hidden; }
      .swatch { display: none; }
      .ink { color: var(--ink); } .soft { color: var(--soft); } .line { color: var(--line); }
      .band { color: light-dark(#1f5690, #86adcf); } .accent { color: var(--accent); }
      .main-svg { position: absolute; top: 0; left: 0; pointer-events: none; }
      .main-svg .draglayer { pointer-events: all; }
      @media print { :host { break-inside: avoid; } }
    `];constructor(){super(),this._redraw=()=>this._draw(),this._redrawLight=()=>this._draw(U,{width:Math.min(this._place?.clientWidth||e0,e0)}),this._redrawWide=()=>this._draw().then(()=>this._place?.clientWidth&&this._library?.Plots.resize(this._place)),this._theme=new MutationObserver(this._redraw)}connectedCallback(){super.connectedCallback(),Ql.addEventListener("change",this._redraw),window.addEventListener("beforeprint",this._redrawLight),window.addEventListener("afterprint",this._redrawWide),this._theme.observe(document.documentElement,{attributeFilter:["data-theme"]}),this.hasUpdated&&this._draw()}disconnectedCallback(){super.disconnectedCallback(),Ql.removeEventListener("change",this._redraw),window.removeEventListener("beforeprint",this._redrawLight),window.removeEventListener("afterprint",this._redrawWide),this._theme.disconnect(),this._library?.purge(this._place)}render(){return this._error?o`<p class="error">${this._error}</p>`:o`${Object.keys(U).map(e=>o`<i class="swatch ${e}"></i>`)}
      <figure role="img" aria-label=${this.label}></figure>`}updated(e){e.has("figure")&&this._draw()}get _place(){return this.renderRoot.querySelector("figure")}get _colours(){let t=Object.keys(U).map(n=>[n,getComputedStyle(H(this.renderRoot,`.${n}`)).color]);return Object.fromEntries(t)}async _draw(e,t={}){try{this._library||(this._library=await this.load())}catch(r){this._error=r.message;return}if(!this.isConnected||!this._place)return;let{data:n,layout:a,config:i}=this.figure(e??this._colours);await this._library.react(this._place,n,{...a,...t},i)}};customElements.define("jw-chart",Na);var Zf=24,Jf=70,[qa,t0]=[.08,.84];function Qf(s){let e=[...s.mismatch_db>0?[{name:"Reflected at the transmitter",loss:s.mismatch_db}]:[],...s.parts.map(({element:a,name:i,loss_db:r})=>({name:`${a+1} · ${i}`,loss:r??0}))],t=0;return[...e.map(a=>{let i={...a,from:t};return t+=a.loss,i}),{name:"Whole line",from:0,loss:s.loss_db??t}]}function s0(s,e=U){let t=Qf(s),n=t.map((r,l)=>l),a=t.length-1,i=te({x:"loss, dB",y:"",colours:e,height:t.length*Zf+Jf});return{data:[{type:"bar",orientation:"h",y:n,base:t.map(({from:r})=>r),x:t.map(({loss:r})=>r),marker:{color:t.map((r,l)=>l===a?e.ink:e.band)},text:t.map(({loss:r})=>A(r)),textposition:"outside",cliponaxis:!1,customdata:t.map(({name:r})=>r),hovertemplate:"%{customdata}: %{text}<extra></extra>"}],layout:{...i,margin:{...i.margin,r:64},xaxis:{...i.xaxis,rangemode:"tozero"},yaxis:{...i.yaxis,autorange:"reversed",tickvals:n,ticktext:t.map(({name:r})=>eu(r)),showgrid:!1}},config:ee}}var eu=s=>s.length>22?`${s.slice(0,21)}…`:s;function tu({sweep:s,bands:e}){let t=s.band.filter(a=>a===s.band[0]).length,n=s.band.map((a,i)=>{let r=i%t;return Math.floor(i/t)+qa+t0*r/Math.max(t-1,1)});return{count:t,x:n,names:e.map(({column:a})=>a.name)}}var Pa=(s,e)=>s.flatMap((t,n)=>n%e===e-1?[t,null]:[t]);function su(s,e,t){if(e===null||t===null)return{x:[],y:[]};let[n,a]=[s+qa,s+qa+t0];return{x:[n,a,a,n,n,null],y:[e,e,t,t,e,null]}}function nu(s,e,t,n){let a=e.bands.map(i=>{let r=s.bands.findIndex(({column:l})=>l.id===i.column.id);return su(r,i[t][0],i[t].at(-1))});return{type:"scatter",mode:"lines",fill:"toself",fillcolor:Ht(n.band),line:{width:0},x:a.flatMap(({x:i})=>i),y:a.flatMap(({y:i})=>i),hoverinfo:"skip"}}function n0({result:s,spread:e,key:t,title:n,colours:a=U}){let{count:i,x:r,names:l}=tu(s),c=te({x:"",y:n,colours:a,height:280}),h=s.bands.findIndex(({column:_})=>_.id===s.column.id),b=t==="margin_db";return{data:[...e?[nu(s,e,t,a)]:[],{type:"scatter",mode:"lines",x:Pa(r,i),y:Pa(s.sweep[t],i),connectgaps:!1,line:{color:a.band,width:2.5},customdata:Pa(s.sweep.frequency_hz.map(O),i),hovertemplate:`%{y:${b?"+":""}.2f}${b?" dB":""} at %{customdata}<extra></extra>`}],layout:{...c,xaxis:{...c.xaxis,tickvals:l.map((_,$)=>$+.5),ticktext:l,tickangle:-90,range:[0,l.length],showgrid:!1},yaxis:{...c.yaxis,...b?{tickformat:"+d"}:{rangemode:"normal"}},shapes:[...b?[La(a)]:[],...h===-1?[]:[au(h,a)]]},config:ee}}var au=(s,e)=>({type:"rect",layer:"below",xref:"x",yref:"paper",x0:s,x1:s+1,y0:0,y1:1,line:{width:1,color:e.accent,dash:"dot"}});function iu(s){let e=s.standing_wave.distance_m.at(-1)??0;return[...new Set([...s.parts.map(({distance_m:t})=>t),e])]}function a0(s,e=U){let{distance_m:t,voltage_v:n,current_a:a}=s.standing_wave,i=te({x:"from the transmitter, m",y:"peak voltage, V",colours:e}),r=(l,c,h)=>({type:"scatter",mode:"lines",x:t,y:l,hovertemplate:`%{y:.3g} ${h} at %{x:.3g} m<extra></extra>`,...c});return{data:[r(n,{line:{color:e.band,width:2.5}},"V"),r(a,{line:{color:e.accent,width:2,dash:"dash"},yaxis:"y2"},"A")],layout:{...i,margin:{...i.margin,r:56},yaxis:{...i.yaxis,rangemode:"tozero",title:{text:"peak voltage, V (solid)",font:{color:e.band}}},yaxis2:{...i.yaxis,overlaying:"y",side:"right",rangemode:"tozero",showgrid:!1,tickmode:"auto",title:{text:"peak current, A (dashed)",font:{color:e.accent}}},shapes:iu(s).map(l=>({type:"line",yref:"paper",x0:l,x1:l,y0:0,y1:1,line:{color:e.soft,width:1,dash:"dot"}}))},config:ee}}var Wa=class extends p({result:f(d),spread:f(d),drawing:{type:Number},failure:{type:String},load:f(d)}){static styles=[g,m`
      :host { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(440px, 100%), 1fr)); gap: 12px; }
      section {
        min-width: 0; padding: 10px 12px; background: var(--card); border: 1px solid var(--line);
        border-radius: var(--round);
      }
      .spread {
        grid-column: 1 / -1; display: flex; flex-wrap: wrap; gap: 6px 14px; align-items: center;
        min-height: var(--target);
      }
      h3 { font-size: 0.95rem; }
      @media print { .spread button { display: none; } section { break-inside: avoid; } }
    `];willUpdate(e){let{result:t,spread:n}=this;if(e.has("result")&&(this._loss=a=>s0(t,a),this._wave=a=>a0(t,a)),e.has("result")||e.has("spread")){let a=(i,r)=>l=>n0({result:t,spread:n,key:i,title:r,colours:l});this._margin=a("margin_db","smallest margin, dB"),this._vswr=a("vswr","VSWR at the transmitter")}}render(){let{result:e}=this,t=(e.parts.length+2)*24+70,n=A(e.loss_db),[a,i,r,l]=[`Loss of each part, adding up to ${n}; the same numbers stand in the table of all numbers`,`Peak voltage and current along the cables, ends of the elements marked; largest ${this._largest()}`,`Smallest margin of the line on every band, dB; the chosen band is outlined${this._shaded}`,`VSWR at the transmitter on every band; the chosen band is outlined${this._shaded}`];return o`<section>
        <h3>Where the loss goes</h3>
        <jw-chart id="loss" style="--chart:${t}px" .figure=${this._loss} .load=${this.load}
          label=${a}></jw-chart>
      </section>
      <section>
        <h3>Wave along the line at ${O(e.frequency_hz)}</h3>
        <jw-chart id="wave" .figure=${this._wave} .load=${this.load} label=${i}></jw-chart>
        <p class="quiet">Upright lines mark where one element ends and the next begins.</p>
      </section>
      <section>
        <h3>Smallest margin over the bands</h3>
        <jw-chart id="margin" style="--chart:280px" .figure=${this._margin} .load=${this.load}
          label=${r}></jw-chart>
      </section>
      <section>
        <h3>VSWR over the bands</h3>
        <jw-chart id="vswr" style="--chart:280px" .figure=${this._vswr} .load=${this.load}
          label=${l}></jw-chart>
      </section>
      <div class="spread">${this._spread()}</div>`}get _shaded(){return this.spread?", the spread shaded":""}_largest(){let{voltage_v:e,current_a:t}=this.result.standing_wave;return e.length===0?"unknown, as there is no cable":`${y(Math.max(...e),3)} V and ${y(Math.max(...t),3)} A`}_spread(){let{spread:e}=this,t=e?`The curves are those of the cautious figures at nominal lengths. Shaded: nine of ten of ${e.draws.toLocaleString("en")} lines drawn at random within what is not known (electrical lengths, phases, tolerance of joints). ${ql(e)}`:"",n=(a,i)=>o`<button id="spread" @click=${()=>x(this,"jw-line-spread",{begin:i})}>${a}</button>`;if(this.drawing>0){let a=this.drawing.toLocaleString("en");return o`<p class="quiet" role="status">${t} Drawing ${a} lines at random…</p>
        ${n("Stop",!1)}`}return o`<p class="quiet" role="status">${this.failure||t||"No spread is drawn."}</p>
      ${e&&e.draws>=1e4?u:n("Draw the spread",!0)}`}};customElements.define("jw-line-charts",Wa);var Ia=(s,e)=>s===null?"–":E(s,e,3),i0=(s,e,t)=>s===null||e===null?Ia(s,t):`${y(s,3)} of ${y(e,3)} ${t}`,r0=[["From",s=>`${y(s.distance_m,4)} m`],["Loss",s=>A(s.loss_db)],["Heat",s=>Ia(s.lost_w,"W")],["VSWR",s=>s.vswr===null?"–":y(s.vswr,3)],["Peak voltage",s=>i0(s.peak_voltage_v,s.allowed_voltage_v,"V")],["Peak current",s=>Ia(s.peak_current_a,"A")],["Hottest",s=>i0(s.temperature_c,s.allowed_temperature_c,"°C")]],Ha=class extends p({result:f(d)}){static styles=[g,I,z(L),m`
      .scroll { overflow-x: auto; }
      .plain { min-width: 720px; }
      .chip { padding: 2px 7px; border-radius: 5px; font-weight: 700; }
      @media print { .plain { font-size: 7.5pt; min-width: 0; } }
    `];render(){return o`<div class="scroll" tabindex="0" role="group" aria-label="All numbers"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Part</th>${r0.map(([e])=>o`<th scope="col" class="number">${e}</th>`)}
          <th scope="col" class="number">Margin</th><th scope="col">Limited by</th>
        </tr>
      </thead>
      <tbody>
        ${this.result.parts.map((e,t)=>this._row(e,t))}
      </tbody>
    </table></div>`}_row(e,t){let n=e.refused_by||e.margin_db===null?"none":R(e.margin_db);return o`<tr data-part=${t}>
      <th scope="row">${e.element+1}. ${e.name}${G(e.pack)}</th>
      ${r0.map(([,a])=>o`<td class="number">${a(e)}</td>`)}
      <td class="number"><span class="chip" data-step=${n}>${dt(e)}</span></td>
      <td>${e.binding?Ce[e.binding]:""}${t===this.result.weakest?", weakest":""}</td>
    </tr>`}};customElements.define("jw-line-numbers",Ha);var ru=.1;function ou(s){let{whole_cost_by_band_db:e,half_decibel_cost_by_band_db:t}=s.reception,n=s.bands.map(({column:l,loss_db:c},h)=>({id:l.id,name:l.name,loss:c,cost:e[h],half:t[h]})).filter(({loss:l,cost:c})=>l!==null&&c!==null&&l>0),a=(l,c)=>n.find(h=>h.id===l)??c,[i,r]=[a("40m",n[0]),a("70cm",n.at(-1))];return i&&r&&i!==r?[i,r]:[]}function o0({name:s,loss:e,cost:t}){let n=Math.abs(t)<ru?"nothing one would notice":`${t.toFixed(1)} dB`;return`on ${s} this line loses up to ${e.toFixed(1)} dB and costs ${n} on receive (${A(t)})`}function l0(s){let[e,t]=ou(s);return e?`${lu(o0(e))}; ${o0(t)}. Half a decibel more at the antenna takes ${A(e.half)} of signal over noise on ${e.name}, where the noise around the antenna is weakened along with the signal, and ${A(t.half)} on ${t.name}, where the receiver’s own noise rules.`:""}var lu=s=>s[0].toUpperCase()+s.slice(1);var du=["preamplifier.gain_db","preamplifier.noise_figure_db"],cu={gain_db:15,noise_figure_db:1},Ba=class extends p({request:f(d),result:f(d),names:f(d),refused:f(d)},v){static styles=[g,m`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: end;
      }
      label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      .own { padding-bottom: 18px; }
      .why { margin: 4px 0 10px; }
      .scroll { overflow-x: auto; }
      i { display: block; height: 8px; min-width: 1px; background: var(--accent); border-radius: 3px; }
      .two { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(280px, 100%), 1fr)); gap: 14px; }
      .bar { width: 40%; vertical-align: middle; }
      h3 { margin-bottom: 2px; font-size: 0.9rem; }
      .plain :is(th, td) { padding-top: 2px; padding-bottom: 2px; }
      .here { font-weight: 700; }
      @media print { .fields { display: none; } .two { gap: 4mm; } }
    `];render(){let{reception:e,bands:t,column:n}=this.result,a=t.map((i,r)=>({id:i.column.id,name:i.column.name,cost:e.whole_cost_by_band_db[r]}));return o`<div class="fields" @jw-change=${this._changed}>${this._form()}</div>
      <p class="why">${l0(this.result)}</p>
      <div class="two">
        <section>
          <h3>By part on ${n.name}</h3>
          ${this._bars(e.costs.map(({part:i,name:r,cost_db:l})=>({id:String(i),name:r,cost:l})),"Whole line",e.whole_cost_db)}
          ${e.external_noise_db===null?u:o`<p class="quiet">${fu(e)}</p>`}
        </section>
        <section><h3>Whole line by band</h3>${this._bars(a,"",0,n.id)}</section>
      </div>`}_bars(e,t,n,a){let i=Math.max(...e.map(({cost:l})=>l??0),n??0,.01),r=({id:l,name:c,cost:h})=>o`<tr data-id=${l} class=${l===a?"here":""}>
      <th scope="row">${c}</th>
      <td class="number">${h===null?"–":`${h.toFixed(2).replace("-","−")} dB`}</td>
      <td class="bar"><i style="width:${Math.max(h??0,0)/i*100}%"></i></td>
    </tr>`;return o`<table class="plain">
      <tbody>${e.map(r)}${t?r({id:"whole",name:t,cost:n}):u}</tbody>
    </table>`}_form(){let{receiver:e={}}=this.request,{preamplifier:t}=e,n=t?.before_element,a=r=>this.refused&&`${this.refused.group}.${this.refused.field}`===r?this.refused.message:"",i=(r,l)=>q(this.vocabulary,l,this.vocabulary.valueOf(r,l),a(l));return o`${i(e,"receiver.noise_figure_db")}${i(e,"receiver.environment")}
      <div class="own">
        <label for="preamplifier">Preamplifier</label>
        <select id="preamplifier" @change=${this._placed}>
          <option value="" .selected=${!t}>none</option>
          ${this.names.map((r,l)=>o`<option value=${l} .selected=${n===l}>before ${l+1}, ${r}</option>`)}
        </select>
      </div>
      ${t?du.map(r=>i(t,r)):u}`}_placed({target:e}){let t=this.request.receiver?.preamplifier??cu;this._edit({preamplifier:e.value===""?null:{...t,before_element:Number(e.value)}})}_changed(e){e.stopPropagation();let t=W(e),n=Object.keys(e.detail.changes).some(a=>a.startsWith("preamplifier"));this._edit(n?{preamplifier:{...this.request.receiver.preamplifier,...t}}:t)}_edit(e){x(this,"jw-line-edit",{kind:"receiver",changes:e})}},fu=({environment:s,external_noise_db:e,system_noise_db:t})=>`Noise over k·T₀·b: ${e.toFixed(1)} dB around the antenna (${s.toLowerCase()}), ${t.toFixed(1)} dB with line and receiver.`;customElements.define("jw-line-receive",Ba);var Ua=class extends p({result:f(d),request:f(d),current:{type:Boolean},names:f(d),refused:f(d),spread:f(d),drawing:{type:Number},failure:{type:String},loadCharts:f(d)}){static styles=[g,j,m`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; min-width: 0; }
      @media print { .numbers { order: -1; } }
    `];render(){let{result:e}=this;return o`<section><h2 class="unseen">Charts</h2>
        <jw-line-charts .result=${e} .spread=${this.spread} .drawing=${this.drawing} .failure=${this.failure}
          .load=${this.loadCharts}></jw-line-charts>
      </section>
      <section class="panel">
        <h2>What would help</h2><jw-line-changes .result=${e} .current=${this.current}></jw-line-changes>
      </section>
      <section class="panel">
        <h2>On receive</h2>
        <jw-line-receive .request=${this.request} .result=${e} .names=${this.names}
          .refused=${this.refused}></jw-line-receive>
      </section>
      <section class="panel numbers"><h2>All numbers</h2><jw-line-numbers .result=${e}></jw-line-numbers></section>
      <jw-cautions .cautions=${e.cautions}></jw-cautions>`}};customElements.define("jw-line-results",Ua);var uu=[1e3,1e4],zs=class{drawing=0;#e;#t;#s=0;constructor(e,t){this.#e=e,this.#t=new X(e,t)}get result(){return this.#t.result}get error(){return this.#t.error}answered;async begin(e){this.cancel();let t=this.#s;for(let n of uu){if(this.drawing=n,await this.#t.ask({...e,draws:n}),t!==this.#s)return;if(this.#t.status!=="complete")break;this.answered=e}this.drawing=0,this.#e.requestUpdate()}cancel(){this.drawing!==0&&(this.#s++,this.drawing=0,this.#t.cancel(),this.#e.requestUpdate())}};function Rs({receiver:s,explain:e,...t}){return t}var Ms=class{line;spread;#e;#t;#s;#n=new Map;constructor(e,t){this.line=new X(e,(n,a)=>t("line",n,a)),this.spread=new zs(e,(n,a)=>t("spread",n,a)),this.#e=new X(e,(n,a)=>this.#a(n,t("line",n,a)))}follow(e,t=!1){let n=JSON.stringify(e),a=JSON.stringify(Rs(e));a!==this.#s&&this.spread.cancel(),t||n!==this.#t?(this.#t=n,this.line.askNext(e)):this.current(e)&&a!==this.#s&&(this.#s=a,this.spread.begin(Rs(e)))}drawAgain(e){this.spread.begin(Rs(e))}current(e){return this.line.status==="complete"&&JSON.stringify(this.line.answered)===JSON.stringify(e)}get spreadShown(){let{answered:e,result:t}=this.spread;if(!(!e||!this.line.answered))return JSON.stringify(e)===JSON.stringify(Rs(this.line.answered))?t:void 0}compare(e){let t=e.map(({request:l})=>JSON.stringify(l)),{answered:n,result:a}=this.line;n&&this.#n.set(JSON.stringify(hu(n)),{result:a});let{status:i}=this.#e,r=t.findIndex(l=>!this.#n.has(l));return r!==-1&&i!=="pending"&&this.#e.ask(e[r].request),t.map(l=>this.#n.get(l)??{})}async#a(e,t){try{let n=await t;return this.#n.set(JSON.stringify(e),{result:n}),n}catch(n){throw this.#n.set(JSON.stringify(e),{problem:n.message}),n}}},hu=({explain:s,...e})=>e;var d0={cable:{kind:"cable",cable:"rg_213",length_m:10},joint:{kind:"joint",family:"n"},adapter:{kind:"joint",family:"uhf",adapter_to:"n"},part:{kind:"part",loss_db:.2,name:"Switch"}},Fa={vswr:{kind:"vswr",vswr:2},impedance:{kind:"impedance",resistance_ohm:50,reactance_ohm:0}};function c0(s,e,t){return e.filter((n,a)=>a!==t&&n<s).length}var mu={cable:["cable.cable","cable.length_m","cable.name"],joint:["joint.family","joint.adapter_to","joint.condition","joint.added_resistance_ohm","joint.exposure","joint.name"],part:["part.name","part.loss_db","part.vswr","part.power_limit_w","part.voltage_limit_v"],measured:["measured.name","measured.touchstone"]},Da=class extends p({element:f(d),at:{type:Number},count:{type:Number},name:{type:String},reading:f(d),open:{type:Boolean},refused:f(d)},v){static styles=[g,z(L),m`
      article { background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      :host([weakest]) article { border: 2px solid var(--accent); }
      .row { display: flex; }
      #handle {
        padding: 0; border: 0; background: none; color: var(--soft); cursor: grab; touch-action: none;
        font-size: 1.1rem;
      }
      #toggle {
        flex: 1; min-width: 0; display: grid; grid-template-columns: 1.6em minmax(0, 1fr) auto 3.6em; gap: 0 8px;
        align-items: center;
        min-height: 52px; padding: 4px 10px 4px 0; border: 0; background: none; color: inherit; text-align: left;
      }
      #toggle:hover .name { color: var(--accent); }
      .at { color: var(--soft); text-align: right; font-size: 0.85rem; }
      .name { display: block; font-weight: 600; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
      .sub { display: block; color: var(--soft); font-size: 0.78rem; line-height: 1.2; }
      .loss { font-size: 0.85rem; color: var(--soft); white-space: nowrap; }
      .chip {
        padding: 5px 4px; border-radius: 6px; text-align: center; font-weight: 700; font-size: 0.9rem;
        white-space: nowrap;
      }
      .chip.none { background: var(--refused); color: var(--refused-ink); font-weight: 500; font-size: 0.8rem; }
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: end;
        padding: 6px 12px 2px; background: var(--sunk);
      }
      .acts {
        display: flex; flex-wrap: wrap; gap: 6px; padding: 4px 12px 10px; background: var(--sunk);
        border-radius: 0 0 var(--round) var(--round);
      }
      .acts button { font-size: 0.85rem; padding: 0 11px; }
      .marks { padding: 6px 12px; font-size: 0.82rem; }
      .whole { padding: 0 12px 6px; }
      @media print {
        #handle, .fields, .acts { display: none; }
        #toggle { min-height: 0; padding: 1px 4px; }
        .chip { padding: 0 4px; }
      }
    `];updated(){this.toggleAttribute("weakest",this.reading?.weakest??!1)}render(){return o`<article aria-label="Element ${this.at+1}, ${this.name}">
      <div class="row">
        <button id="handle" aria-label="Move ${this.name}: drag, or Alt with the up and down arrows"
          @pointerdown=${this._grab}>⠿</button>
        <button id="toggle" aria-expanded=${this.open} aria-controls="fields"
          @click=${()=>x(this,"jw-line-toggle",{at:this.at})}>
          <span class="at">${this.at+1}</span>
          <span><span class="name">${this.name}</span><span class="sub">${this._sub()}</span></span>
          <span class="loss">${this.reading?A(this.reading.loss):""}</span>
          ${this._chip()}
        </button>
      </div>
      <div id="fields">${this.open?this._form():u}</div>
    </article>`}get focused(){return this.shadowRoot?.activeElement?.id??""}focusOn(e){(this.shadowRoot?.getElementById(e)??H(this.renderRoot,"#toggle")).focus()}_sub(){let{reading:e}=this;return this.refused?o`<span class="error">needs a correction</span>`:e?e.refusal?"refused here":[e.limited?`limited by ${e.limited}`:"no limit known",e.weakest?"weakest":"",e.undecided?"undecided":"",e.marks.length>0?"see note":""].filter(Boolean).join(" · "):"…"}_chip(){let{reading:e}=this;return e?e.refusal?o`<span class="chip none">refused</span>`:e.margin===null?o`<span class="chip none">–</span>`:o`<span class="chip" data-step=${R(e.margin)}>${S(e.margin)}</span>`:o`<span class="chip none">…</span>`}_form(){let{reading:e,refused:t}=this,{kind:n}=this.element,a=mu[n],i=h=>t&&h===`${n}.${t.field}`?t.message:"",r=h=>q(this.vocabulary,h,this.vocabulary.valueOf(this.element,h),i(h)),l=t&&!a.includes(`${n}.${t.field}`),c=e?[e.refusal,...e.marks].filter(Boolean):[];return o`${c.map(h=>o`<p class="marks">${h}</p>`)}
      <div class="fields" @jw-change=${this._changed}>${a.map(r)}</div>
      ${l?o`<p class="error whole" role="alert">${t.message}</p>`:u}
      <div class="acts">
        <button id="up" ?disabled=${this.at===0} @click=${()=>this._edit("move",{to:this.at-1})}>Up</button>
        <button id="down" ?disabled=${this.at===this.count-1}
          @click=${()=>this._edit("move",{to:this.at+1})}>Down</button>
        <button id="duplicate" @click=${()=>this._edit("duplicate")}>Duplicate</button>
        <button id="remove" ?disabled=${this.count===1} @click=${()=>this._edit("remove")}>Remove</button>
        <button id="why" ?disabled=${!e}
          @click=${()=>x(this,"jw-line-open",{open:String(this.at)})}>Derivation</button>
      </div>`}_changed(e){e.stopPropagation(),e.detail.live||this._edit("set",{changes:W(e)})}_grab(e){x(this,"jw-line-grab",{at:this.at,pointer:e})}_edit(e,t={}){x(this,"jw-line-edit",{kind:e,at:this.at,...t})}};customElements.define("jw-line-card",Da);var pu=[["cable","Cable"],["joint","Joint"],["adapter","Adapter"],["part","Part"]],Ga=class extends p({elements:f(d),answered:f(d),result:f(d),names:f(d),refused:f(d),_open:w(d),_drag:w(d)}){static styles=[g,tt,m`
      ol { list-style: none; margin: 0; padding: 0; display: grid; gap: 6px; }
      li { position: relative; }
      li[data-moved] { opacity: 0.5; }
      li[data-before]::before, li[data-after]::after {
        content: ''; position: absolute; left: 0; right: 0; height: 4px; border-radius: 2px; background: var(--accent);
      }
      li[data-before]::before { top: -5px; }
      li[data-after]::after { bottom: -5px; }
      .add { display: flex; flex-wrap: wrap; gap: 6px; align-items: center; margin-top: 8px; }
      .add button { font-size: 0.85rem; padding: 0 10px; }
      .end { padding: 2px 0 4px 44px; font-size: 0.85rem; color: var(--soft); }
      @media print { .add { display: none; } ol { gap: 0; } }
    `];constructor(){super(),this._open=-1}willUpdate(e){let{refused:t}=this,n=t?.message===e.get("refused")?.message;e.has("refused")&&t&&!n&&(this._open=t.at)}render(){return o`<p class="end">Transmitter</p>
      <ol @jw-line-toggle=${this._toggled} @jw-line-grab=${this._grabbed} @jw-line-edit=${this._edited}
        @keydown=${this._key}>
        ${this.elements.map((e,t)=>this._row(e,t))}
      </ol>
      <p class="end">Antenna</p>
      <div class="add" role="group" aria-label="Add an element">
        <span class="quiet">
          ${this._open===-1?"Add before the antenna:":`Add after element ${this._open+1}:`}
        </span>
        ${pu.map(([e,t])=>o`<button data-add=${e} @click=${()=>this._add(d0[e])}>${t}</button>`)}
        <label class="pick">Measured<input id="measured" type="file" accept=".s2p,.ts,.txt"
          @change=${this._measured}></label>
      </div>`}_row(e,t){let n=Ll(this.answered,e,t),a=n===-1||!this.result?void 0:Nl(this.result,n),i=this.refused?.at===t?this.refused:void 0,{at:r,to:l}=this._drag??{at:-1,to:-1};return o`<li ?data-moved=${r===t}
      ?data-before=${l===t&&t<r} ?data-after=${l===t&&t>r}>
      <jw-line-card .element=${e} .at=${t} .count=${this.elements.length} .name=${this.names[t]}
        .open=${t===this._open} .reading=${a} .refused=${i}></jw-line-card>
    </li>`}_toggled(e){this._open=this._open===e.detail.at?-1:e.detail.at}_cards(){return[...this.renderRoot.querySelectorAll("jw-line-card")]}async _edited({detail:e,target:t}){let n=t.focused,[a,i]=[e.at,{move:e.to,duplicate:e.at+1,remove:Math.max(e.at-1,0)}[e.kind]];i!==void 0&&(this._open===a&&(this._open=e.kind==="remove"?-1:i),await Promise.resolve(),await this.updateComplete,await this._cards()[i]?.updateComplete,this._cards()[i]?.focusOn(e.kind==="remove"?"toggle":n))}_key(e){let t={ArrowUp:-1,ArrowDown:1}[e.key],n=e.target.closest("jw-line-card");if(!e.altKey||t===void 0||!n)return;e.preventDefault();let a=n.at+t;a>=0&&a<this.elements.length&&x(n,"jw-line-edit",{kind:"move",at:n.at,to:a})}_grabbed({detail:e,target:t}){let{pointer:n,at:a}=e;if(n.button!==0)return;let i=n.currentTarget??n.composedPath()[0];i.setPointerCapture(n.pointerId);let r=this._cards().map(b=>b.getBoundingClientRect()).map(({top:b,height:_})=>b+scrollY+_/2),l=b=>this._drag={at:a,to:c0(b.clientY+scrollY,r,a)},c=b=>{for(let[$,k]of Object.entries(h))i.removeEventListener($,k);let{to:_}=this._drag??{to:a};this._drag=void 0,b.type==="pointerup"&&_!==a&&x(t,"jw-line-edit",{kind:"move",at:a,to:_})},h={pointermove:l,pointerup:c,pointercancel:c};for(let[b,_]of Object.entries(h))i.addEventListener(b,_)}_add(e){let t=this._open===-1?this.elements.length:this._open+1;this._open=t,x(this,"jw-line-edit",{kind:"add",at:t,element:e})}async _measured(e){let[t]=e.target.files;if(!t)return;let n=t.name.replace(/\.\w+$/,"").slice(0,60);this._add({kind:"measured",touchstone:await t.text(),name:n}),e.target.value=""}};customElements.define("jw-line-list",Ga);var f0="three numbers: frequency in MHz, resistance and reactance in Ω";function u0(s){let t=s.split(/\r?\n/).map(n=>n.replace(/[#!].*/,"").trim()).flatMap((n,a)=>{if(n==="")return[];let[i,r,l,...c]=n.split(/[\s;,]+/).map(Number);if([i,r,l].some(b=>b===void 0||Number.isNaN(b))||c.length>0)throw new RangeError(`Row ${a+1} is “${n}”; allowed: ${f0}.`);return[{frequency_hz:Number((i*1e6).toPrecision(12)),resistance_ohm:r,reactance_ohm:l}]});if(t.length<2)throw new RangeError(`There ${t.length===1?"is 1 row":"are no rows"}; allowed: at least two, each with ${f0}.`);return t.sort((n,a)=>n.frequency_hz-a.frequency_hz)}var h0=s=>s.map(e=>`${e.frequency_hz/1e6}  ${e.resistance_ohm}  ${e.reactance_ohm??0}`).join(`
`);var gu=[["vswr","its VSWR"],["impedance","one impedance"],["table","impedances in a table"],["measured","a measured file"]],bu={vswr:["load_vswr.vswr","load_vswr.angle_deg"],impedance:["load_impedance.resistance_ohm","load_impedance.reactance_ohm"],measured:["load_measured.touchstone"],table:[]},Va=class extends p({load:f(d),refused:f(d),_way:w(d),_problem:w(d)},v){static styles=[g,m`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: end;
      }
      label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      textarea {
        width: 100%; min-height: 130px; padding: 8px; font: 0.85rem/1.4 ui-monospace, monospace; color: inherit;
        background: var(--card); border: 1px solid var(--edge); border-radius: var(--round);
      }
      .own { padding-bottom: 18px; }
      .wide { grid-column: 1 / -1; }
    `];willUpdate(e){e.has("load")&&(this._way=this.load.kind,this._problem="")}render(){let e=n=>this._way===this.load.kind?this.vocabulary.valueOf(this.load,n):"",t=n=>this.refused?.field===n.split(".")[1]?this.refused?.message:"";return o`<div class="fields" @jw-change=${this._changed}>
      <div class="own">
        <label for="way">The antenna is known by</label>
        <select id="way" @change=${this._rechosen}>
          ${gu.map(([n,a])=>o`<option value=${n} .selected=${n===this._way}>${a}</option>`)}
        </select>
      </div>
      ${bu[this._way].map(n=>q(this.vocabulary,n,e(n),t(n)))}
      ${this._way==="table"?this._table():u}
      ${this.refused?.field===""?o`<p class="error wide" role="alert">${this.refused.message}</p>`:u}
    </div>`}_table(){let e=this._problem||(this.refused?.field==="points"?this.refused.message:"");return o`<div class="wide">
      <label for="rows">Rows of frequency in MHz, resistance and reactance in Ω</label>
      <textarea id="rows" spellcheck="false" placeholder="14.0  42  -8"
        aria-invalid=${e?"true":"false"} aria-describedby="rows-under"
        .value=${this.load.points?h0(this.load.points):""} @change=${this._pasted}></textarea>
      <p id="rows-under" class=${e?"error":"quiet"} role=${e?"alert":"note"}>
        ${e||"Paste them from a table or an analyser’s export."}
      </p>
    </div>`}_rechosen(e){this._way=e.target.value,this._way in Fa&&this._set(Fa[this._way])}_pasted(e){try{this._set({kind:"table",points:u0(e.target.value)}),this._problem=""}catch(t){this._problem=t.message}}_changed(e){e.stopPropagation(),this._set({...this._way===this.load.kind?this.load:{kind:this._way},...W(e)})}_set(e){x(this,"jw-line-edit",{kind:"load",load:e})}};customElements.define("jw-line-load",Va);var Ka=["power_w","mode","band","frequency_hz","exposure","ambient_temperature_c"],Ls=["altitude_m","solar_irradiance_w_per_m2","added_sealing","vibration","matings_per_year","service_life_years","transmit_share","on_time_s","off_time_s","power_is","system_impedance_ohm","return_loss_asked_db","region"],_u=142e5,Ya=class extends p({request:f(d),refused:f(d),_more:w(d)},v){static styles=[g,m`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: end;
      }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; color: var(--accent); font-size: 0.9rem;
      }
      .onpaper { display: none; }
      @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
      @media print { .fields, details { display: none; } .onpaper { display: block; font-size: 8pt; } }
    `];willUpdate(e){e.has("refused")&&this.refused&&Ls.includes(this.refused.field)&&(this._more=!0)}render(){let e=Ls.filter(t=>this._value(t)!==this.vocabulary.valueOf({},`station.${t}`)).length;return o`<p class="onpaper">${this._inWords()}</p>
      ${this._fields(Ka)}
      <details ?open=${this._more} @toggle=${t=>this._more=t.target.open}>
        <summary>More about station and site${e>0?` (${e} set)`:""}</summary>
        ${this._more?this._fields(Ls):u}
      </details>`}_inWords(){let t=[...Ka,...Ls].filter(a=>Ka.includes(a)||this._value(a)!==this.vocabulary.valueOf({},`station.${a}`)).filter(a=>this._value(a)!==null),n=(a,i)=>`${this.vocabulary.labelOf(i)}: ${this.vocabulary.spoken(i,this._value(a))}`;return t.map(a=>n(a,`station.${a}`)).join(" · ")}_value(e){return this.vocabulary.valueOf(this.request,`station.${e}`)}_fields(e){return o`<div class="fields" @jw-change=${this._changed}>${e.map(t=>this._field(t))}</div>`}_field(e){return e==="frequency_hz"&&this.request.band?u:q(this.vocabulary,`station.${e}`,this._value(e),this.refused?.field===e?this.refused.message:"")}_changed(e){if(e.stopPropagation(),e.detail.live)return;let t=W(e);"band"in t&&(t.frequency_hz=t.band===null?this.request.frequency_hz??_u:null),x(this,"jw-line-edit",{kind:"station",changes:t})}};customElements.define("jw-line-station",Ya);var Xa=class extends p({request:f(d),names:f(d),answered:f(d),result:f(d),refused:f(d)}){static styles=[g,j,m`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; min-width: 0; }
      .list { padding: 12px 8px; }
      .list h2 { padding-left: 6px; }
      @media print { .noprint { display: none; } }
    `];render(){let{request:e}=this,t=n=>this.refused?.group===n?this.refused:void 0;return o`<section class="panel">
        <h2>Station and site</h2>
        <jw-line-station .request=${e} .refused=${t("station")}></jw-line-station>
      </section>
      <section class="panel list">
        <h2>The line <small>loss, and margin in dB</small></h2>
        <jw-line-list .elements=${e.elements} .names=${this.names} .answered=${this.answered}
          .result=${this.result} .refused=${t("elements")}></jw-line-list>
      </section>
      <section class="panel noprint">
        <h2>The antenna</h2><jw-line-load .load=${e.load} .refused=${t("load")}></jw-line-load>
      </section>`}};customElements.define("jw-line-editor",Xa);var Qa=(s,e,t)=>s.map((n,a)=>a===e?t:n),wu=(s,e)=>{let t={...ne(s),request:e};return{...s,lines:Qa(s.lines,s.current,t)}};function p0(s,e,t){let{preamplifier:n}=s.receiver??{};if(!n)return{...s,elements:e};let a=t.indexOf(n.before_element),{preamplifier:i,...r}=s.receiver;return a!==-1&&(r.preamplifier={...n,before_element:a}),{...s,elements:e,receiver:r}}var m0=(s,e)=>p0(s,e.map(t=>s.elements[t]),e),Za=s=>s.elements.map((e,t)=>t),g0={set:(s,{at:e,changes:t})=>({...s,elements:Qa(s.elements,e,be({...s.elements[e],...t}))}),add:(s,{at:e,element:t})=>s.elements.length>=ps?s:p0(s,s.elements.toSpliced(e,0,t),Za(s).toSpliced(e,0,void 0)),duplicate:(s,{at:e})=>g0.add(s,{at:e+1,element:s.elements[e]}),remove:(s,{at:e})=>s.elements.length===1?s:m0(s,Za(s).toSpliced(e,1)),move:(s,{at:e,to:t})=>t<0||t>=s.elements.length||t===e?s:m0(s,Za(s).toSpliced(e,1).toSpliced(t,0,e)),load:(s,{load:e})=>({...s,load:be(e)}),station:(s,{changes:e})=>be({...s,...e}),receiver:(s,{changes:e})=>({...s,receiver:be({...s.receiver,...e})})},Ja={choose:(s,{line:e})=>({...s,current:e}),rename:(s,{name:e})=>({...s,lines:Qa(s.lines,s.current,{...ne(s),name:e})}),insert:(s,{lines:e})=>{let t=[...s.lines,...e].slice(0,nt);return{lines:t,current:Math.min(s.lines.length,t.length-1)}},keep:s=>Ja.insert(s,{lines:[xu(s)]}),drop:(s,{line:e})=>{if(s.lines.length===1)return s;let t=s.current>e||s.current===s.lines.length-1?s.current-1:s.current;return{lines:s.lines.toSpliced(e,1),current:Math.max(t,0)}}};function xu(s){let{name:e,request:t}=ne(s),n=e.replace(/ \d+$/,""),a=new Set(s.lines.map(r=>r.name)),i=2;for(;a.has(`${n} ${i}`);)i++;return{name:`${n} ${i}`,request:t}}function b0(s,e){if(e.kind in Ja)return Ja[e.kind](s,e);let{request:t}=ne(s),n=g0[e.kind](t,e);return n===t?s:wu(s,n)}function _0({part:s,to:e},t,n){let a=t[s].element,i=t.findIndex(r=>r.element===a);return n[a].kind==="cable"?{kind:"set",at:a,changes:{cable:e}}:{kind:"set",at:a,changes:{[s===i?"family":"adapter_to"]:e}}}var ei=class extends p({lines:f(d),current:{type:Number},canUndo:{type:Boolean},canRedo:{type:Boolean}}){static styles=[g,tt,m`
      div { display: flex; flex-wrap: wrap; gap: 6px; align-items: end; }
      .names { flex: 1 1 280px; flex-wrap: nowrap; }
      .names > label { flex: 1 1 120px; max-width: 280px; }
      label > span { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      button { font-size: 0.85rem; padding: 0 10px; }
      .file:hover { border-color: var(--accent); }
      .file:focus-within { outline: 3px solid var(--accent); outline-offset: 2px; }
      @media print { :host { display: none; } }
    `];render(){let e=(t,n,a={})=>o`<button id=${t} ?disabled=${a.off??!1}
        @click=${()=>x(this,"jw-line-do",{what:t})}>${n}</button>`;return o`<div>
      <div class="names">
        ${this.lines.length>1?this._lines():u}
        <label><span>Its name</span><input id="name" maxlength="60" autocomplete="off"
          .value=${this.lines[this.current].name} @change=${this._renamed}></label>
      </div>
      <div role="group" aria-label="Undo and keep">
        ${e("undo","Undo",{off:!this.canUndo})}${e("redo","Redo",{off:!this.canRedo})}
        <button id="keep" ?disabled=${this.lines.length>=nt}
          @click=${()=>this._edit({kind:"keep"})}>Keep a copy to compare</button>
      </div>
      <div role="group" aria-label="Take along">
        ${e("link","Copy link")}${e("export","Export lines")}
        <label class="pick">Import<input id="import" type="file" accept=".json,application/json"
          @change=${this._picked}></label>
        ${e("print","Print")}
      </div>
    </div>`}_lines(){return o`<label><span>Line</span><select id="lines" @change=${t=>this._edit({kind:"choose",line:Number(t.target.value)})}>
      ${this.lines.map(({name:t},n)=>o`<option value=${n} .selected=${n===this.current}>${t}</option>`)}
    </select></label>`}_renamed({target:e}){let t=e.value.trim();t?this._edit({kind:"rename",name:t}):e.value=this.lines[this.current].name}_picked({target:e}){let[t]=e.files;t&&x(this,"jw-line-import",{file:t}),e.value=""}_edit(e){x(this,"jw-line-edit",e)}};customElements.define("jw-line-bar",ei);var ti=class extends p({lines:f(d),current:{type:Number},known:f(d)}){static styles=[g,j,z(L),m`
      .scroll { overflow-x: auto; }
      .plain :is(td, th) { vertical-align: middle; }
      .plain thead th { white-space: normal; vertical-align: bottom; }
      tr[aria-current] th { border-left: 4px solid var(--accent); padding-left: 6px; }
      .chip { padding: 3px 8px; border-radius: 5px; font-weight: 700; }
      button { font-size: 0.82rem; padding: 0 9px; }
      td { white-space: nowrap; }
      @media print { button { display: none; } }
    `];render(){return o`<section class="panel"><h2>Lines kept</h2>
      <div class="scroll" tabindex="0" role="group" aria-label="Kept lines"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Line</th><th scope="col" class="number">Smallest margin</th><th scope="col">Band</th>
          <th scope="col" class="number">Loss</th><th scope="col" class="number">At the antenna</th>
          <th scope="col" class="number">VSWR</th><th scope="col">Weakest part</th>
          <th><span class="unseen">Choose</span></th>
        </tr>
      </thead>
      <tbody>
        ${this.lines.map((e,t)=>this._row(e,t))}
      </tbody>
    </table></div></section>`}_row({name:e},t){let n=t===this.current;return o`<tr data-line=${t} aria-current=${n?"true":u}>
      <th scope="row">${e}</th>
      ${this._numbers(this.known[t]??{})}
      <td>
        <button ?disabled=${n} aria-label=${n?u:`Show ${e}`}
          @click=${()=>x(this,"jw-line-edit",{kind:"choose",line:t})}>${n?"shown":"Show"}</button>
        <button aria-label="Drop ${e}" ?disabled=${this.lines.length===1}
          @click=${()=>x(this,"jw-line-edit",{kind:"drop",line:t})}>Drop</button>
      </td>
    </tr>`}_numbers({result:e,problem:t}){if(!e)return o`<td colspan="6" class="quiet">${t??"The core is at work…"}</td>`;let{margin_db:n,delivered_w:a}=e,i=a===null||e.power_w===0;return o`<td class="number">
        ${n===null?"none":o`<span class="chip" data-step=${R(n)}>${S(n)} dB</span>`}
      </td>
      <td>${e.column.name}</td>
      <td class="number">${A(e.loss_db)}</td>
      <td class="number">${i?"–":E(a,"W",3)}</td>
      <td class="number">${e.input.vswr===null?"–":y(e.input.vswr,3)}</td>
      <td>${e.weakest===null?"–":e.parts[e.weakest].name}</td>`}};customElements.define("jw-line-compare",ti);var si="methods";function ni(s,e){let t=s===null||s===""?NaN:Number(s);return Number.isInteger(t)&&t>=0&&t<e?t:void 0}function w0(s,e){if(s===si)return"Method";let t=ni(s,e.length);return t===void 0?"":`Element ${t+1}: ${e[t]}`}function yu(s){let e=s?.field??"",t=/^elements\[(\d+)\](?:\.(\w+))?/.exec(e);if(t)return{group:"elements",at:Number(t[1]),field:t[2]??""};let[n,...a]=e.split(".");return n==="load"?{group:n,field:(a[0]??"").replace(/\[.*/,"")}:n==="receiver"?{group:a.length>1?a[0]:n,field:a.at(-1)??""}:{group:e===""?"":"station",field:e}}var $u={load:"The antenna"};function x0(s,e,t,n){if(!s)return;let a=yu(s),{group:i,at:r=-1,field:l}=a,c={elements:e.elements[r]?.kind,load:`load_${e.load.kind}`}[i]??i,h=t(`${c}.${l}`)??(l||$u[i]||""),b=i==="elements"?`Element ${r+1}, ${n[r]}: ${h}`:h;return{...a,message:le(s,b)}}function y0(s,e){let t=JSON.stringify(e.request),n=s.lines.findIndex(({request:a})=>JSON.stringify(a)===t);return n===-1?{kind:"insert",lines:[e]}:{kind:"choose",line:n}}var Bt=class extends p({loadCharts:f(d),_open:w(d),_said:w(d)},Y){static view="line";static styles=[g,j,Gr];_document=d;constructor(){super(),this._open=null,this._said="",this._told="",this._answers=new Ms(this,(e,t,n)=>this.transport.ask(e,t,n)),this._catalogue=this._enquiry("catalogue"),this._pressed=e=>this._key(e)}_begin(){this._document=new ot(at,()=>localStorage,this.vocabulary.fields,Ue)}connectedCallback(){super.connectedCallback(),window.addEventListener("keydown",this._pressed)}disconnectedCallback(){super.disconnectedCallback(),window.removeEventListener("keydown",this._pressed)}updated(e){if(this.toggleAttribute("beside",this._open!==null),this.transport===void 0)return;this._answers.follow(this._request),(e.has("_open")||e.has("transport"))&&this._open!==null&&["initial","error"].includes(this._catalogue.status)&&this._catalogue.ask({})}render(){let{lines:e,current:t}=this._document.present,{line:n,spread:a,spreadShown:i}=this._answers,{name:r,request:l}=this._current,c=jl(l,this.vocabulary.lists),h=x0(n.error,l,k=>this.vocabulary.labelOf(k),c),b=w0(this._open,c),_=this._answers.current(this._request),$=h?`Out of date, these are the numbers from before the last change. ${h.message}`:"";return o`<div @jw-line-edit=${this._edited} @jw-line-do=${this._do} @jw-line-import=${this._imported}
        @jw-line-open=${({detail:k})=>this._show(k.open)} @jw-close=${()=>this._show(null)}
        @jw-line-take=${this._taken}
        @jw-line-spread=${({detail:k})=>k.begin?this._answers.drawAgain(n.answered):a.cancel()}
        @input=${()=>this._typing=!0} @change=${()=>this._typing=!1}
        @focusout=${()=>this._typing=!1}>
      ${this._progress(n)}
      <main>
        <h2 class="onpaper wide">${r}</h2>
        <jw-line-bar class="wide" .lines=${e} .current=${t}
          .canUndo=${this._document.canUndo} .canRedo=${this._document.canRedo}></jw-line-bar>
        ${h?.group===""?this._trouble(h.message):u}
        ${e.length>1?this._compared(e,t):u}
        <jw-line-editor .request=${l} .names=${c} .answered=${n.answered} .result=${n.result}
          .refused=${h}></jw-line-editor>
        ${n.result?o`<jw-line-answer .result=${n.result} .answered=${n.answered} .open=${this._open??""}
                .outdated=${$}></jw-line-answer>
              <jw-line-results .result=${n.result} .request=${l} .current=${_} .names=${c}
              .refused=${h} .spread=${i} .drawing=${a.drawing}
              .failure=${a.error?.message??""} .loadCharts=${this.loadCharts}></jw-line-results>`:o`<p class="waiting ${h?"error":"quiet"}" role="status">
                ${h?.message??"The core is at work…"}
              </p>`}
      </main>
      <p class="unseen" role="status">${this._said}</p>
      <jw-sheet .heading=${b}>${b?this._detail(_):u}</jw-sheet>
    </div>`}_detail(e){let{answered:t,result:n}=this._answers.line;return o`<jw-line-detail .element=${this._explained} .answered=${t} .result=${n}
      .current=${e} .catalogue=${this._catalogue.result} .error=${this._catalogue.error}></jw-line-detail>`}_trouble(e){return o`<p class="trouble wide" role="alert">${e} <button @click=${()=>this._answers.follow(this._request,!0)}>Try again</button></p>`}_compared(e,t){let n=this.transport?this._answers.compare(e):[];return o`<jw-line-compare class="wide" .lines=${e} .current=${t} .known=${n}></jw-line-compare>`}get _current(){return ne(this._document.present)}get _explained(){return ni(this._open,this._current.request.elements.length)}get _request(){let{request:e}=this._current;return this._explained===void 0?e:{...e,explain:this._explained}}_edit(e){this._document.put(b0(this._document.present,e),e.kind!=="choose")}_edited({detail:e}){this._edit(e),e.kind==="move"&&(this._said=`Moved to place ${e.to+1}.`),e.kind==="keep"&&(this._said="A copy is kept and shown."),this._settle()}_settle(){this._open!==si&&this._explained===void 0&&(this._open=null),ka(this._current,this._open,!1),this._tellTrouble(),this.requestUpdate()}_taken({detail:{change:e}}){let{parts:t}=this._answers.line.result;this._edited({detail:_0(e,t,this._request.elements)}),this._said=`${e.name} is fitted; undo takes it back.`}_show(e){e!==this._open&&(this._open=e,ka(this._current,e,!0))}_restore(e){let t=Al(e,this.vocabulary.fields);this._open=t.open,t.line&&this._edit(y0(this._document.present,t.line)),this._notice(t.problem&&{text:t.problem}),this._settle()}_tellTrouble(){let{problem:e,spoilt:t}=this._document;if(e===this._told)return;this._told=e;let n=t&&{words:"Save them",run:()=>M("jointwise-lines-unread.txt","text/plain",t)};this._notice(e&&{text:e,action:n})}_key(e){!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||this._typing||(e.preventDefault(),this._do({detail:{what:e.shiftKey?"redo":"undo"}}))}async _do({detail:{what:e}}){e==="undo"||e==="redo"?(this._document[e](),this._said=e==="undo"?"Undone.":"Done again.",this._settle()):this._notice(await Rl[e](this._document.present))}async _imported({detail:{file:e}}){let{edit:t,notice:n}=await Ml(e,this.vocabulary.fields);t&&this._edited({detail:t}),this._notice(n)}};customElements.define("jw-line-view",Bt);var vu={"":"as the site",indoor:"indoors",sheltered:"outdoors, sheltered",exposed:"outdoors, exposed",immersed:"under water"},$0=({bands:s,cables:e,families:t,noise_environments:n})=>({"cable.cable":{label:"Cable",entries:e},"cable.length_m":{label:"Length",unit:"m"},"cable.name":{label:"Your name for it"},"joint.family":{label:"Family",entries:t},"joint.adapter_to":{label:"Adapter to",options:se("no adapter",t)},"joint.exposure":{label:"Weather here",options:vu},"joint.name":{label:"Your name for it"},"part.name":{label:"What it is"},"part.loss_db":{label:"Loss"},"part.vswr":{label:"VSWR of the part"},"part.power_limit_w":{label:"Stands, average"},"part.voltage_limit_v":{label:"Stands, peak"},"measured.name":{label:"What it is"},"measured.touchstone":{label:"Touchstone file, two ports"},"load_vswr.vswr":{label:"VSWR of the antenna"},"load_vswr.angle_deg":{label:"Angle of its reflection"},"load_impedance.resistance_ohm":{label:"Resistance"},"load_impedance.reactance_ohm":{label:"Reactance"},"load_measured.touchstone":{label:"Touchstone file, one port"},"station.power_w":{label:"Transmitter power"},"station.band":{label:"Band",options:se("spot frequency",s)},"station.frequency_hz":{label:"Spot frequency",factor:1e6,unit:"MHz"},"receiver.noise_figure_db":{label:"Receiver noise figure"},"receiver.environment":{label:"Noise around the antenna",entries:n},"preamplifier.before_element":{label:"Preamplifier"},"preamplifier.gain_db":{label:"Its gain"},"preamplifier.noise_figure_db":{label:"Its noise figure"}});var v0={id:Bt.view,label:"Line",fields:ms,words:$0,element:({transport:s,stage:e,loadCharts:t})=>o`<jw-line-view class="view" .transport=${s} .stage=${e} .loadCharts=${t}></jw-line-view>`};var ku=s=>({type:"choice",choices:s,nullable:!0,default:null}),k0=({requests:{cell:s,matrix:e},first_bands:t},{powers_w:n})=>({matrix:{...s,...e,bands:{...e.bands,default:t},powers_w:{...e.powers_w,default:n},shows:{type:"choice",choices:["margin","largest"],default:"margin",nullable:!1},view:ku(["methods","website"])}});var me=class extends Error{constructor({detail:e,field:t,value:n,allowed:a}){super(e),this.name="Refusal",this.field=t,this.value=n,this.allowed=a}};var ft=class extends me{constructor(e){super({detail:e}),this.name="Unreachable"}},Ut=s=>s?.name==="Unreachable";var Su=new Set(["families","bands","frequencies_hz","powers_w"]),S0=Object.keys(D.requests.matrix),Eu=S0.filter(s=>!Su.has(s)),E0=(s,e)=>Object.fromEntries(e.filter(t=>s[t]!==null).map(t=>[t,s[t]]));function $e(s,e){return{...E0(s,S0),bands:Qe(s,e)}}function Ft(s){if(!(s.family===null||s.band===null&&s.frequency_hz===null))return E0(s,[...Eu,"family","band","frequency_hz","power_w"])}function Ns(s){return s.view!==null?s.view:Ft(s)?"derivation":s.family!==null?"family":s.band===null&&s.frequency_hz===null?void 0:"band"}var ut={view:null,family:null,band:null,frequency_hz:null};function j0(s,e,t){let{first:n,isPacked:a,lists:i}=t,r=JSON.stringify($e(s,t))===JSON.stringify($e(n.matrix,t));if(e||r&&!a)return D.matrix;let l=new Set(Qe(s,t));return{families:i.families.filter(({id:c})=>s.families===null||s.families.includes(c)),columns:i.bands.filter(({id:c})=>l.has(c)),powers_w:s.powers_w}}var ai=s=>s.low_hz!==void 0&&s.low_hz===s.high_hz;function Dt(s,e){if(s.band!==null)return e.columns.find(({id:t})=>t===s.band);if(s.frequency_hz!==null)return e.columns.find(t=>ai(t)&&t.low_hz===s.frequency_hz)}function ii(s,e){let t=Ft(e);return t!==void 0&&["family","band","frequency_hz"].every(n=>s[n]===t[n])}function A0(s,e,t,{bands:n,families:a}){let i=(l,c)=>l.find(h=>h.id===c)?.name??c,r=Dt(e,t)?.name??i(n,e.band)??`${e.frequency_hz} Hz`;switch(s){case"methods":return"Method";case"website":return"Put this on your website";case"family":return i(a,e.family);case"band":return`All limits on ${r}`;case"derivation":return`${i(a,e.family)} on ${r}`}return""}var qs="club-matrix.json",Gt="embed.js";var ju=s=>`"${String(s).replaceAll("&","&amp;").replaceAll('"',"&quot;").replaceAll("<","&lt;")}"`;function Ps(s,e){let n=Object.entries(e).filter(([,a])=>a!==""&&a!==!1).map(([a,i])=>i===!0?` ${a}`:` ${a}=${ju(i)}`);return`<${s}${n.join("")}></${s}>`}var Au='<script>addEventListener("message",e=>{for(const f of document.querySelectorAll("iframe"))if(f.contentWindow===e.source&&e.data&&e.data.type==="jointwise-height")f.height=e.data.height})<\/script>';function O0(s,{server:e,fragment:t,page:n,theme:a,lang:i,compact:r,rows:l,columns:c}){let h={theme:a==="auto"?"":a,lang:i,compact:r},b=t?`${e}#${t}`:e,_=F=>Ps("script",{src:F});switch(s){case"files":return _(Gt)+Ps("jointwise-matrix",{src:qs,size:`${l}x${c}`,link:n,...h});case"server":return _(new URL(Gt,e).href)+Ps("jointwise-matrix",{link:b,...h})}let $=new URL("embed.html",e),k=Object.entries(h).filter(([,F])=>F).map(([F,nr])=>[F,nr===!0?"":String(nr)]);$.search=String(new URLSearchParams(k)),$.hash=t;let C=460+l*(r?28:46);return Ps("iframe",{src:$.href,title:"Power margins of coaxial joints",width:"100%",height:C,loading:"lazy"})+Au}var Ws=[["files","Two files","Save both files, put them into the folder of your web page, and paste the line into the page."],["server","This server","Paste the line; this server answers your visitors, so they must be able to reach it."],["frame","A frame","For sites that take no script: paste the line; where even its last part is refused, the height stays as given."]],Ou=[["auto","as the visitor has it"],["light","light"],["dark","dark"]],Tu=[["","as the web page"],["en","English"],["de","Deutsch"]],Cu=({protocol:s,hostname:e})=>s.startsWith("http")&&!/^(localhost|127\.|\[::1\])/.test(e),ri=class extends p({state:f(d),power:{type:Number},transport:f(d),loadEmbed:f(d),_way:w(d),_look:w(d),_script:w(d),_failed:w(d)},v){static styles=[g,m`
      :host > * + * { margin-top: 14px; }
      .ways { display: flex; flex-wrap: wrap; gap: 6px; }
      .choices {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(190px, 1fr)); gap: 10px 14px; align-items: end;
      }
      label { display: grid; gap: 3px; font-size: 0.85rem; }
      label:has([type='checkbox']) { display: flex; gap: 10px; align-items: center; min-height: var(--target); }
      input[type='checkbox'] { width: 22px; height: 22px; }
      .wide { grid-column: 1 / -1; }
      textarea {
        width: 100%; min-height: 7.5rem; padding: 10px; font: 0.82rem/1.45 ui-monospace, monospace; color: inherit;
        resize: vertical;
        background: var(--sunk); border: 1px solid var(--edge); border-radius: var(--round); overflow-wrap: anywhere;
      }
      .acts { display: flex; flex-wrap: wrap; gap: 6px; }
      .preview { min-height: 320px; }
    `];constructor(){super(),this._way="files",this._look={theme:"auto",lang:"",compact:!1,page:Cu(location)?this._server:""},this._snapshot=new X(this,(e,t)=>this.transport.ask("snapshot",e,t))}firstUpdated(){this.loadEmbed().then(e=>this._script=e,e=>this._failed=e.message)}updated(){let e={...$e(this.state,this.vocabulary),power_w:this.power},t=JSON.stringify(e);t!==this._asked&&this._snapshot.askNext(e),this._asked=t}render(){let e=location.protocol.startsWith("http")?Ws:Ws.slice(0,1),[,,t]=Ws.find(([n])=>n===this._way)??Ws[0];return o`<p>The matrix as it is set now, with every derivation, on a page of your own. Each cell opens there as
    it does here.</p>
      <div class="ways" role="group" aria-label="How it is brought in">
        ${e.map(([n,a])=>o`<button data-way=${n} aria-pressed=${n===this._way}
              @click=${()=>this._way=n}>${a}</button>`)}
      </div>
      <p class="quiet">${t}</p>
      <div class="choices">
        ${this._select("theme","Light or dark",Ou)} ${this._select("lang","Language",Tu)}
        <label><input id="site-compact" type="checkbox" .checked=${this._look.compact}
          @change=${({target:n})=>this._set("compact",n.checked)}>Compact: numbers only</label>
        ${this._way==="files"?o`<label class="wide">Where the full page lies for your visitors; empty for nowhere
              <input id="site-page" placeholder="jointwise.html" .value=${this._look.page}
                @input=${({target:n})=>this._set("page",n.value.trim())}></label>`:u}
      </div>
      ${this._made()}`}_select(e,t,n){return o`<label>${t}
      <select id="site-${e}" @change=${({target:a})=>this._set(e,a.value)}>
        ${n.map(([a,i])=>o`<option value=${a} ?selected=${a===this._look[e]}>${i}</option>`)}
      </select></label>`}_set(e,t){this._look={...this._look,[e]:t}}get _server(){return location.origin+location.pathname}_made(){let{result:e,error:t}=this._snapshot,n=this._failed??t?.message;if(n)return o`<p class="error" role="alert">${n}</p>`;if(!e||!this._script)return o`<p class="preview" role="status">The core is at work…</p>`;let a=JSON.stringify(e),{families:i,columns:r}=e.matrix,l=Ee({...this.state,...ut,power_w:this.power},this.vocabulary.first.matrix),c=O0(this._way,{...this._look,server:this._server,fragment:l,rows:i.length,columns:r.length}),{theme:h,lang:b,compact:_,page:$}=this._look;return o`<textarea id="snippet" readonly aria-label="The line to paste" .value=${c}></textarea>
      <div class="acts">
        <button id="copy" @click=${async()=>x(this,"jw-notice",await zu(c))}>Copy the line</button>
        ${this._way==="files"?o`<button id="save-script" @click=${()=>M(Gt,"text/javascript",this._script)}>Save
            ${Gt}</button>
              <button id="save-snapshot" @click=${()=>M(qs,"application/json",a)}>Save
              ${qs}</button>`:u}
      </div>
      <h3>As your visitors see it</h3>
      <div class="preview"><jointwise-matrix .snapshot=${a} theme=${h} lang=${b||u}
        ?compact=${_} link=${$||u}></jointwise-matrix></div>`}};async function zu(s){let{link:e}=await Z(s);return e?{text:"Copy the line by hand out of its field."}:{text:"Line copied; paste it where the matrix shall stand."}}customElements.define("jw-website",ri);var Ru={te11:"TE11",no_figures:"freq",receive_only:"rx only",no_heat_room:"hot",immersion:"wet",house:"house"},Mu={customary_frequency:"f",weather:"w",vibration:"v",wear:"s",cable_fit:"c",cold:"t"},Is="≠",ze=s=>Ru[s.id]??s.name,ht=s=>Mu[s.id]??s.name[0],Lu=[],Nu=(s,e)=>e===0?Lu:s.filter((t,n)=>e>>n&1);function mt(s,e,t,n){let a=s.refused_by[e][t][n];return{family:s.families[e],column:s.columns[t],power:s.powers_w[n],margin:s.margin_db[e][t][n],high:s.margin_high_db[e][t][n],limit:s.limits[s.binding[e][t][n]],refusedBy:a===-1?void 0:s.gates[a],marks:Nu(s.gates,s.marks[e][t][n]),undecided:s.undecided[e][t][n],disagrees:s.heat_disagrees[e][t],largest:s.largest_power_w[e][t]}}function T0(s,e){return s.refusedBy?ze(s.refusedBy):e==="margin"?S(s.margin):s.largest===null?"none":Ot(s.largest)}function C0(s){let e=`${s.family.name}, ${s.column.name}, ${T(s.power)}`,t=s.marks.map(i=>`${i.name}: ${s.family.gate_reasons[i.id]}`);if(s.refusedBy)return[`${e}: refused, ${ze(s.refusedBy)}, ${s.refusedBy.name}`,s.family.gate_reasons[s.refusedBy.id],...t].join(". ");let n=s.largest===null?"no power holds":`holds up to ${Ot(s.largest)} watts`,a=[`${e}: margin ${S(s.margin)} dB, set by ${s.limit} at ${O(s.column.high_hz)}`,`range ${S(s.margin)} to ${S(s.high)} dB`,n];return s.undecided&&a.push("Undecided: sources differ on which side of the limit it lies"),s.disagrees&&a.push("The two ways to the heat limit differ by more than three times"),[...a,...t].join(". ")}var oi=class extends p({matrix:f(d),column:{type:Number},power:{type:Number}}){static styles=[g,z(L),m`
      .scroll { overflow-x: auto; margin-top: 12px; }
      .plain { min-width: 500px; }
      td.number { padding-left: 6px; }
      .margin { font-weight: 650; padding: 5px 6px !important; }
      [data-step='refused'] { background: var(--refused); color: var(--refused-ink); }
    `];render(){let{low_hz:e,high_hz:t}=this.matrix.columns[this.column];return o`<p>${e===t?O(e):`${O(e)} to ${O(t)}`}. Cautious to generous
    figures; the power limits are PEP.</p>
      <div class="scroll" tabindex="0" role="region" aria-label="Limits by family">
        <table class="plain">
          <thead>
            <tr>
              <th>Family</th><th class="number">Margin, dB</th><th class="number">Heat, W</th>
              <th class="number">Voltage, W</th><th class="number">Match, dB</th><th
                class="number">Largest, W</th><th>Marks</th>
            </tr>
          </thead>
          <tbody>
            ${this.matrix.families.map((n,a)=>this._row(a))}
          </tbody>
        </table>
      </div>`}_row(e){let{matrix:t,column:n}=this,a=mt(t,e,n,t.powers_w.indexOf(this.power));return o`<tr data-family=${a.family.id}>
      <th scope="row">${a.family.name}</th>
      <td class="number margin" data-step=${a.refusedBy?"refused":R(a.margin)}>
        ${a.refusedBy?ze(a.refusedBy):S(a.margin)}
      </td>
      ${this._range(t.heat_allowed_w[e][n],i=>y(i,3))}
      ${this._range(t.voltage_allowed_w[e][n],i=>y(i,3))}
      ${this._range(t.match_margin_db[e][n],S)}
      <td class="number">${a.largest===null?"none":Ot(a.largest)}</td>
      <td>${a.marks.map(ht).join(" ")}${a.undecided?" ?":u}</td>
    </tr>`}_range([e,t],n){return e===null?o`<td class="number">–</td>`:o`<td class="number">${e===t?n(e):o`${n(e)}<br>to ${n(t)}`}</td>`}};customElements.define("jw-band-limits",oi);var li=class extends p({sheet:f(d),sources:f(d),packs:f(d)}){static styles=[g,I,m`
      section { margin-top: 18px; }
      h3 { margin-bottom: 6px; }
      .hazard {
        padding: 8px 12px; margin-top: 6px; border-left: 4px solid var(--alarm); background: var(--alarm-wash);
      }
      td:nth-child(2) { font-weight: 600; }
    `];render(){let{sheet:e}=this;return o`<p>${e.summary}${G(e.pack)}</p>
      ${e.also_called.length>0?o`<p class="quiet">Also called ${e.also_called.join(", ")}.</p>`:u}
      ${e.hazards.length>0?o`<section><h3>Near relatives: what not to
          mate</h3>${e.hazards.map(t=>this._hazard(t))}</section>`:u}
      <section>
        <h3>Values</h3>
        <table class="plain">
          <thead><tr><th>Quantity</th><th>Value</th><th>From</th></tr></thead>
          <tbody>${e.values.map(t=>this._value(t))}</tbody>
        </table>
      </section>`}_hazard(e){return o`<div class="hazard">${e.text} <span class="kind">${e.kind}</span></div>`}_value(e){let{unit:t,low:n,high:a}=e,i=n===a?E(n,t):`${E(n,t)} to ${E(a,t)}`;return o`<tr data-field=${e.field}>
      <th scope="row">${e.name}</th>
      <td>${i}</td>
      <td>
        ${e.kinds.map(r=>o`<span class="kind">${r}</span> `)}${G(this._pack(e))}
        <div class="quiet">${e.sources.map(r=>this._title(r)).join("; ")}${e.note?o`. ${e.note}`:u}</div>
      </td>
    </tr>`}_pack({sources:e}){return e.map(t=>hs(t,this.packs)).find(Boolean)}_title(e){return ae(this.sources.find(t=>t.id===e))||e}};customElements.define("jw-data-sheet",li);var Pu=["frequency","power"],di=class extends p({cell:f(d),load:f(d),_chosen:w(d)}){static styles=[g,m`
      .limits { display: flex; flex-wrap: wrap; gap: 6px; margin-bottom: 8px; }
      h4 { margin-top: 10px; break-after: avoid; }
      @media print { .limits { display: none; } }
    `];constructor(){super(),this._charts=[]}willUpdate(e){e.has("cell")&&e.get("cell")?.family.id!==this.cell.family.id&&(this._chosen=void 0),(e.has("cell")||e.has("_chosen"))&&(this._charts=Pu.map(t=>this._chart(t)))}render(){return o`<div class="limits" role="group" aria-label="Limit in the charts">
        ${this.cell.limits.map(({id:e,name:t})=>o`<button aria-pressed=${e===this._limit.id} @click=${()=>this._chosen=e}>${t}</button>`)}
      </div>
      ${this._charts.map(({along:e,figure:t,label:n})=>o`<h4>Against ${e}</h4>
          <jw-chart data-along=${e} .figure=${t} .label=${n} .load=${this.load}></jw-chart>`)}
      <p class="quiet">Solid: most cautious figures; dotted: most generous; between them the range. The diamond is this
      cell.</p>`}get _limit(){return this.cell.limits.find(({id:e})=>e===this._chosen)??this.cell.limits[0]}_chart(e){let t={cell:this.cell,limit:this._limit,along:e};return{along:e,figure:n=>Zl({...t,colours:n}),label:Jl(t)}}};customElements.define("jw-charts",di);var ci=class extends p({check:f(d),catalogue:f(d)}){static styles=[g,m`
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; color: var(--accent); font-size: 0.9rem;
      }
      @media print { table { break-inside: avoid; } }
      .far { font-weight: 700; color: var(--alarm); }
    `];render(){let{check:e}=this;return o`<table class="plain">
        <tbody>
          <tr>
            <th scope="row">from the published rating (decides)</th>
            <td class="number">${T(e.rating_allowed_w)} to ${T(e.rating_allowed_high_w)}</td>
          </tr>
          <tr>
            <th scope="row">from first principles (beside it)</th>
            <td class="number">${T(e.first_principles_allowed_w)}</td>
          </tr>
          <tr>
            <th scope="row">ratio to the nearer end of the rating</th>
            <td class="number">${y(e.ratio,3)}</td>
          </tr>
        </tbody>
      </table>
      <p class=${e.agrees?"quiet":"far"}>
        ${e.agrees?"The two agree within a factor of three.":"The two differ by more than a factor of three: take the number with care."}
      </p>
      <details class="more">
        <summary>Steps from first principles</summary>
        <jw-steps .steps=${e.steps} .catalogue=${this.catalogue}></jw-steps>
      </details>`}};customElements.define("jw-cross-check",ci);var fi=class extends p({limit:f(d),catalogue:f(d),binding:{type:Boolean,reflect:!0},_open:w(d)}){static styles=[g,z(L),m`
      details { border: 1px solid var(--line); border-radius: var(--round); }
      :host([binding]) details { border: 2px solid var(--accent); }
      summary {
        display: flex; flex-wrap: wrap; gap: 4px 10px; align-items: center; min-height: 52px; padding: 6px 12px;
        cursor: pointer;
      }
      summary::marker { content: ''; }
      summary::after {
        content: 'steps'; margin-left: auto; color: var(--accent); font-size: 0.85rem; text-decoration: underline;
      }
      details[open] summary::after { content: 'fold'; }
      .margin { padding: 3px 8px; border-radius: 5px; font-weight: 700; }
      .binds {
        padding: 1px 8px; border-radius: 99px; background: var(--accent); color: var(--accent-ink); font-size: 0.75rem;
      }
      p { flex: 1 0 100%; font-size: 0.9rem; }
      jw-steps { padding: 0 12px 10px; }
      @media print {
        summary { min-height: 0; break-inside: avoid; break-after: avoid; }
        summary::after { display: none; }
      }
    `];willUpdate(e){if(!e.has("limit"))return;let{binding:t}=this.limit;e.get("limit")?.binding!==t&&(this._open=t),this.binding=t}render(){let{limit:e}=this;return o`<details ?open=${this._open} @toggle=${t=>this._open=t.target.open}>
      <summary>
        <strong>${e.name}</strong>
        ${e.binding?o`<span class="binds">binding</span>`:u}
        ${e.margin_db===null?o`<span class="quiet">no margin in receive</span>`:o`<span class="margin" data-step=${R(e.margin_db)}>${S(e.margin_db)} dB</span>
              <span class="quiet">to ${S(e.margin_high_db)} dB${this._allowed()}</span>`}
        <p>${e.sentence}</p>
      </summary>
      ${this._open?o`<jw-steps .steps=${e.steps} .catalogue=${this.catalogue}></jw-steps>`:u}
    </details>`}_allowed(){let{allowed_w:e,allowed_high_w:t}=this.limit;return e===null?"":`; allows ${T(e)} to ${T(t)}`}};customElements.define("jw-limit",fi);var z0=[["contact_db","contacts"],["conductor_db","conductors, skin effect"],["dielectric_db","dielectric"],["mismatch_db","mismatch"]],qu={standard:["Limit of the standard","The most that the standard lets a new mated pair of this family lose."],datasheet:["Published maximum","The most that a data sheet states for a part; no standard promises it for the family."],handbook:["Published figure","Measured, or passed on at second hand; no standard promises it."],"common practice":["Customary figure","What the trade reckons with; no standard promises it."],memory:["Maximum, from memory","Its text was not seen; nothing promises it."]},ui=class extends p({losses:f(d),sources:f(d)}){static styles=[g,m`
      .two { display: grid; grid-template-columns: 1.6fr 1fr; gap: 14px; }
      section { padding: 10px 12px; border: 1px solid var(--line); border-radius: var(--round); }
      .total { font-size: 1.2rem; font-weight: 700; }
      i { display: block; height: 6px; min-width: 1px; background: var(--accent); border-radius: 3px; }
      td:last-child { width: 35%; vertical-align: middle; }
      @media print { .two { break-inside: avoid; } }
      @media (max-width: 480px) { .two { grid-template-columns: 1fr; } }
    `];render(){let{losses:e}=this,t=Math.max(...z0.map(([r])=>e[r])),[n,a]=qu[e.published_kind],i=this.sources?.find(({id:r})=>r===e.published_source);return o`<div class="two">
      <section>
        <h4>Expected, computed</h4>
        <p class="total">${y(e.expected_db,3)} dB</p>
        <table class="plain">
          <tbody>
            ${z0.map(([r,l])=>o`<tr>
                <th scope="row">${l}</th>
                <td class="number">${y(e[r],3)} dB</td>
                <td><i style="width:${t>0?e[r]/t*100:0}%"></i></td>
              </tr>`)}
          </tbody>
        </table>
      </section>
      <section>
        <h4>Guaranteed</h4>
        <p class="total">
          ${e.guaranteed_db===null?"none stated":`${y(e.guaranteed_db,3)} dB`}
        </p>
        <h4>${n}</h4>
        <p class="published">${y(e.published_db,3)} dB at ${O(e.published_at_hz)}</p>
        <p class="quiet">${a} Reflection is already included; nothing is added to it.</p>
        <p class="quiet">${ae(i)} <span class="kind">${e.published_kind}</span></p>
      </section>
    </div>`}};customElements.define("jw-losses",ui);var hi=class extends p({cell:f(d),catalogue:f(d),loadCharts:f(d)}){static styles=[g,I,z(L),m`
      .verdict { display: flex; gap: 14px; align-items: center; padding-bottom: 12px; }
      .verdict b {
        padding: 10px 12px; border-radius: var(--round); font-size: 1.5rem; line-height: 1; white-space: nowrap;
      }
      .verdict b[data-step='refused'] { font-size: 1rem; background: var(--refused); color: var(--refused-ink); }
      .facts {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 8px 14px; padding-bottom: 6px;
      }
      dt { color: var(--soft); font-size: 0.78rem; }
      dd { font-weight: 600; }
      section { margin-top: 20px; }
      h3 { margin-bottom: 8px; }
      jw-limit + jw-limit { margin-top: 8px; }
      .gate td:first-child { width: 1.6rem; font-weight: 700; }
      .failed td { color: var(--alarm); }
      @media print {
        section { margin-top: 3mm; }
        section:has(> .more:not([open])) { display: none; }
        h3 { break-after: avoid; }
      }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; color: var(--accent); font-size: 0.9rem;
      }
    `];render(){let{cell:e,catalogue:t}=this;return o`<div class="verdict">
        ${e.refused_by?o`<b data-step="refused">refused</b>`:o`<b data-step=${R(e.margin_db)}>${S(e.margin_db)} dB</b>`}
        <p id="verdict">${e.verdict}${G(e.family.pack||e.column.pack)}</p>
      </div>
      <dl class="facts">${this._facts()}</dl>
      <section aria-label="Limits">
        <h3>Limits</h3>
        ${e.limits.map(n=>o`<jw-limit data-limit=${n.id} .limit=${n} .catalogue=${t}></jw-limit>`)}
      </section>
      <section><h3>Charts</h3><jw-charts .cell=${e} .load=${this.loadCharts}></jw-charts></section>
      <section><h3>Checks</h3>${this._gates()}</section>
      <section>
        <h3>Loss of the mated pair</h3>
        <jw-losses .losses=${e.losses} .sources=${t?.sources}></jw-losses>
      </section>
      <section><h3>Heat, two ways</h3><jw-cross-check .check=${e.cross_check}
        .catalogue=${t}></jw-cross-check></section>
      <section>
        <h3>Breakdown of the air gap and wave modes</h3>
        <p class="quiet">For information; these do not enter the margin.</p>
        <details class="more">
          <summary>Show ${e.air_breakdown.length} steps</summary>
          <jw-steps .steps=${e.air_breakdown} .catalogue=${t}></jw-steps>
        </details>
      </section>
      <section><jw-cautions .cautions=${e.cautions}></jw-cautions></section>`}_facts(){let{cell:e}=this;return[["Power",T(e.power_w)],["Computed at",O(e.frequency_hz)],["Range",e.margin_db===null?void 0:`${S(e.margin_db)} to ${S(e.margin_high_db)} dB`],["Largest power that holds",e.largest_power_w===null?"none":T(He(e.largest_power_w,3))],["Centre contact",e.contact_temperature_c===null?void 0:this._contact()],["Peak voltage",E(e.peak_voltage_v,"V",3)]].map(([n,a])=>a===void 0?u:o`<div><dt>${n}</dt><dd>${a}</dd></div>`)}_contact(){let{contact_temperature_c:e,allowed_temperature_c:t}=this.cell;return`${y(e,3)} °C of ${y(t,3)} °C`}_gates(){return o`<table class="plain">
      <thead>
        <tr><th><span class="unseen">Passed</span></th><th>Check</th><th>Finding</th></tr>
      </thead>
      <tbody>
        ${this.cell.gates.map(e=>o`<tr class=${e.passed?"gate":"gate failed"} data-gate=${e.id}>
            <td>${e.passed?"✓":e.hard?"✕":"!"}<span
              class="unseen">${e.passed?"passed":e.hard?"refuses":"marked"}</span></td>
            <td>${e.name}</td>
            <td>${e.sentence} ${e.kind?o`<span class="kind">${e.kind}</span>`:u}</td>
          </tr>`)}
      </tbody>
    </table>`}};customElements.define("jw-derivation",hi);var mi=class extends p({kind:{type:String},state:f(d),matrix:f(d),cell:f(d),catalogue:f(d),error:f(d),power:{type:Number},loadCharts:f(d),loadEmbed:f(d),transport:f(d)}){static styles=[g,m`.room { height: 70vh; }`];render(){return this._view()??o`<p class="room" role="status">${this.error?.message??this._waiting()}</p>`}_waiting(){return{family:this.catalogue!==void 0,band:this.matrix.margin_db!==void 0}[this.kind]?"There is no such row or column here; close this sheet and open another.":"The core is at work…"}_view(){let{catalogue:e,cell:t,matrix:n,state:a}=this;switch(this.kind){case"derivation":return t&&o`<jw-derivation .cell=${t} .catalogue=${e} .loadCharts=${this.loadCharts}></jw-derivation>`;case"methods":return e&&o`<jw-methods .catalogue=${e}></jw-methods>`;case"website":return o`<jw-website .state=${a} .power=${this.power} .transport=${this.transport}
          .loadEmbed=${this.loadEmbed}></jw-website>`;case"family":{let i=e?.families.find(({id:r})=>r===a.family);return e&&i&&o`<jw-data-sheet .sheet=${i} .sources=${e.sources} .packs=${e.packs}></jw-data-sheet>`}case"band":{let i=n.columns.indexOf(Dt(a,n));return i===-1||n.margin_db===void 0?void 0:o`<jw-band-limits .matrix=${n} .column=${i} .power=${this.power}></jw-band-limits>`}}}};customElements.define("jw-detail",mi);var Wu=[["link","Copy link"],["csv","CSV"],["json","JSON"],["print","Print"],["website","Put on a website"]],pi=class extends p({file:{type:String}}){static styles=[g,m`
      div { display: flex; flex-wrap: wrap; gap: 6px; }
      button, a { font-size: 0.82rem; padding: 0 9px; }
      a {
        display: grid; align-items: center; min-height: var(--target); color: inherit; text-decoration: none;
        border: 1px solid var(--edge); border-radius: var(--round); background: var(--card);
      }
      a:hover { border-color: var(--ink); }
    `];constructor(){super(),this.file=""}render(){return o`<div role="group" aria-label="Take along">
      ${Wu.map(([e,t])=>o`<button id="export-${e}" @click=${()=>this._export(e)}>${t}</button>`)}
      ${this.file?o`<a id="export-offline" href=${this.file} download="jointwise.html">Save for offline use</a>`:u}
    </div>`}_export(e){this.dispatchEvent(new CustomEvent("jw-export",{detail:{kind:e},bubbles:!0,composed:!0}))}};customElements.define("jw-exports",pi);var bi=new CSSStyleSheet,R0=[["var(--chosen) 100%","calc((100% + 1px) / var(--levels) - 1px) 3px"],["0 100%","100% 7px"],["0 100%","100% 7px"],["0 calc(100% - 7px)","100% 1px"],["50% calc(100% - 10px)","1px 5px"],["50% calc(100% - 12px)","calc(100% - 8px) 1px"],["0 0","auto"]],gi=s=>`linear-gradient(${s} 0 0)`,M0=s=>gi(`color-mix(in srgb,currentColor ${s},transparent)`),N0=`.ladder{background-repeat:no-repeat;
  background-position:${R0.map(([s])=>s).join()};
  background-size:${R0.map(([,s])=>s).join()}}`,L0=new Set,Iu=(s,e)=>`calc((100% + 1px)*${s}/${e})`;function Hu(s){return`linear-gradient(90deg,${s.map((t,n)=>{let a=t==="refused"?"transparent":`var(--step-${t})`,i=Iu(n+1,s.length);return`${a} 0 calc(${i} - 1px),var(--card) 0 ${i}`}).join()})`}function Bu(s,e){let t=a=>a?"var(--hatch)":"none",n=e?["none","none"]:[M0("75%"),M0("30%")];return[gi("var(--accent)"),Hu(s),t(s.includes("refused")),gi("var(--card)"),...n,t(e)]}function P0(s,e){let t=`ladder-${s.join("-")}${e?"-cell-refused":""}`;return L0.has(t)||(L0.add(t),bi.insertRule(`.${t}{background-image:${Bu(s,e).join()}}`)),`ladder ${t}`}var Hs=20,_i=80,q0=s=>Math.round((Math.min(Math.max(s,-Hs),Hs)+Hs)/(2*Hs)*_i);function W0(s,e){let[t,n]=[q0(s),q0(e)];return`from-${t} over-${n-t}`}var Uu=Oe.map((s,e)=>`[data-high="${e}"]::after{color:var(--step-${e}-ink);background:linear-gradient(to bottom left,var(--step-${e}) 50%,transparent calc(50% + 0.5px))}`).join(""),I0=`${Uu}
.number,td>button::before,td>button::after{grid-column:1/-1}
i{grid-area:3/2;height:3px;min-width:3px;margin-top:1px;background:currentColor}
${Array.from({length:_i+1},(s,e)=>{let t=`${e/_i*100}%`;return`.from-${e}{margin-left:${t}}.over-${e}{width:${t}}`}).join(`
`)}`;var Fu=m`
  :host {
    --head: 97px; --least: 44px; --most: 112px; --rung: 15px;
    --hatch: repeating-linear-gradient(135deg, var(--refused) 0 4px, var(--refused-line) 4px 5px);
  }
  .frame {
    position: relative; overflow: auto hidden; overscroll-behavior-x: contain;
    scroll-padding-left: var(--head); background: var(--card);
    border: 1px solid var(--line); border-radius: var(--round);
  }
  .frame { max-width: calc(var(--head) + var(--columns) * var(--most)); }
  :host([fits]) .frame { overflow: visible; scroll-padding: 0; }
  #outdated:empty { display: none; }
  #outdated {
    margin-bottom: 6px; padding: 8px 14px; background: var(--alarm-wash); border: 1px solid var(--alarm);
    border-radius: var(--round);
  }
  /* grey keeps the contrast of the numbers, which fading would take */
  [data-outdated] td { filter: grayscale(1); }
  table {
    border-collapse: separate; border-spacing: 0; table-layout: fixed; width: 100%;
    min-width: calc(var(--head) + var(--columns) * var(--least));
  }
  th, td { padding: 0; font-weight: inherit; }
  thead th {
    position: sticky; top: var(--lift, 0); z-index: 2; background: var(--card); height: 45px;
    border-bottom: 1px solid var(--edge);
  }
  thead th:last-child { border-radius: 0 var(--round) 0 0; }
  tbody th { position: sticky; left: 0; z-index: 1; background: var(--card); border-right: 1px solid var(--edge); }
  thead th:first-child {
    left: 0; z-index: 3; width: var(--head); border-right: 1px solid var(--edge); border-radius: var(--round) 0 0 0;
  }
  button, .empty {
    display: grid; width: 100%; height: 100%; min-width: 0; min-height: 46px; padding: 0;
    border: 1px solid transparent; border-radius: 5px; background-clip: padding-box;
  }
  td > button { grid-template: minmax(11px, 1fr) 16px 7px 8px / 4px minmax(0, 1fr) 4px; }
  .empty { background: var(--sunk); }
  button:hover { border-color: var(--ink); }
  :focus-visible { outline-offset: -2px; position: relative; z-index: 1; border-radius: 5px; }
  th button { background: none; border-color: transparent; align-content: center; }
  tbody th button {
    text-align: left; padding: 2px 4px 2px 8px; font-size: 0.78rem; line-height: 1.15; font-weight: 600;
    overflow-wrap: anywhere;
  }
  thead button { min-height: 44px; text-align: center; font-size: 0.9rem; font-weight: 650; line-height: 1.05; }
  thead button span { font-stretch: condensed; letter-spacing: -0.02em; }
  thead button small { display: block; font-size: 0.7rem; font-weight: 400; color: var(--soft); }
  td[data-open] button { outline: 3px solid var(--accent); outline-offset: -2px; position: relative; z-index: 1; }
  .number {
    grid-row: 2; font-size: 0.84rem; font-stretch: condensed; font-weight: 600; line-height: 16px; text-align: center;
    letter-spacing: -0.02em; white-space: nowrap;
  }
  .long { font-size: 0.66rem; font-weight: 500; letter-spacing: -0.03em; }
  td > button::before {
    grid-row: 1; align-self: end; overflow: clip; font-size: 0.66rem; line-height: 11px; height: 11px;
    padding-left: 3px; text-align: left; white-space: nowrap; letter-spacing: 0.06em; font-weight: 600;
  }
  td > button[data-letters]::before { content: attr(data-letters); }
  td > button[data-high]::after {
    content: '?';
    grid-row: 1; justify-self: end; width: 17px; height: 17px; margin-bottom: -6px; padding-right: 2px;
    border-radius: 0 4px 0 0;
    font: 700 10px/11px var(--figures); text-align: right;
  }
  td button[data-undecided] { border: 1px dashed currentColor; background-clip: border-box; }
  .powers, .powers .largest { display: none; }
  [data-step='refused'] { background-image: var(--hatch); color: var(--refused-ink); }
  td [data-step='refused'] > .number { font-weight: 500; }
  @media (max-width: 480px) { :host { --head: 92px; --least: 48px; } }
`,Vt=m`print, screen and (min-width: 1500px)`,Du=m`
  :host { --head: 190px; }
  td > button { display: block; min-height: 0; }
  .number { display: none; }
  [data-shows='largest'] td .number {
    display: block; padding-right: 16%; font-size: 0.78rem; line-height: var(--rung); text-align: right;
    font-weight: 700;
  }
  [data-shows='largest'] .powers .largest { display: block; font-weight: 700; color: var(--ink); }
  .rungs { display: block; }
  .rung {
    display: block; height: var(--rung); padding: 0 16% 0 3px; text-align: right;
    font-size: 0.74rem; font-weight: 450; line-height: var(--rung); white-space: nowrap; font-stretch: condensed;
  }
  .rung:first-child { border-radius: 4px 4px 0 0; }
  .rung:last-child { border-radius: 0 0 4px 4px; }
  /* without height of its own it never reaches into the line below */
  .rung small { float: left; height: 0; font-size: 0.62rem; letter-spacing: 0.04em; }
  .rung[data-chosen] { box-shadow: inset 0 0 0 1.5px var(--accent); font-weight: 700; }
  .rung[data-undecided]::after { content: '?'; display: inline-block; width: 0; font-weight: 700; }
  td button[data-undecided] { border: 1px solid transparent; background-clip: padding-box; }
  tbody th button { grid-template-columns: 1fr auto; align-items: center; gap: 6px; padding: 0 6px 0 8px; }
  .powers { display: block; text-align: right; font-weight: 400; font-size: 0.7rem; color: var(--soft); }
  .powers span { display: block; height: var(--rung); line-height: var(--rung); white-space: nowrap; }
  .powers [data-chosen] { color: var(--accent); font-weight: 700; }
`,H0=[z(L),z(I0),z(N0),Fu,bi,m`@media ${Vt} { ${Du} }`,m`
    @media print {
      :host { --head: 34mm; --rung: 2.95mm; --least: 0px; }
      .frame { overflow: visible; border: 0; }
      thead th, tbody th { position: static; }
      thead { display: table-header-group; }
      tr { break-inside: avoid; }
      thead th { height: auto; }
      thead button { display: contents; }
      thead th { font-size: 7.5pt; font-weight: 650; line-height: 1.1; text-align: center; }
      .rung { font-size: 6.6pt; }
      .powers { font-size: 6.2pt; color: #333; }
      tbody th button { font-size: 7.5pt; min-height: 0; }
      td > button { border-width: 0.3mm; }
    }
  `];var wi=class extends p({gates:f(d),packed:{type:Boolean}}){static styles=[g,z(L),m`
      :host { font-size: 0.85rem; }
      .scale { display: flex; max-width: 46rem; margin-bottom: 10px; }
      .scale span { flex: 1; padding: 6px 2px; text-align: center; font-size: 0.75rem; line-height: 1.2; }
      .scale span:nth-of-type(5) { border-left: 3px solid var(--ink); }
      dl { display: grid; grid-template-columns: repeat(auto-fill, minmax(260px, 1fr)); gap: 6px 20px; }
      dl div { display: grid; grid-template-columns: 54px 1fr; gap: 8px; align-items: center; }
      dt { display: grid; place-items: center; min-height: 22px; font-weight: 600; }
      dt[data-step='refused'] {
        font-size: 0.72rem; color: var(--refused-ink); border-radius: 4px;
        background: repeating-linear-gradient(135deg, var(--refused) 0 4px, var(--refused-line) 4px 5px);
      }
      .ladder { display: flex; gap: 1px; width: 46px; height: 8px; }
      .ladder i { flex: 1; }
      .range {
        position: relative; width: 46px; height: 9px;
        background: linear-gradient(currentColor 0 0) center/1px 100% no-repeat;
      }
      .range i { position: absolute; left: 30%; right: 20%; top: 4px; height: 2px; background: currentColor; }
      .levels {
        width: 30px; height: 17px;
        background: linear-gradient(var(--step-6) 0 6px, var(--step-5) 6px 12px, var(--step-3) 12px);
        outline: 1px solid var(--line);
      }
      .undecided {
        position: relative; width: 46px; height: 22px; border: 1px dashed; border-radius: 4px; overflow: hidden;
      }
      .undecided i {
        position: absolute; inset: 0 0 auto auto; width: 17px; height: 17px; clip-path: polygon(0 0, 100% 0, 100% 100%);
        font: 700 10px/11px var(--figures); text-align: right; padding-right: 2px;
      }
      dd { line-height: 1.3; }
      dl .unfolded { display: none; }
      @media ${Vt} {
        dl .folded { display: none; }
        dl .unfolded { display: grid; }
      }
      @media print {
        :host { font-size: 7pt; }
        .scale span { font-size: 6.5pt; padding: 1mm; }
        dl { grid-template-columns: repeat(4, 1fr); gap: 0.5mm 4mm; }
      }
    `];render(){let e=o`<span class="ladder">${[7,6,5,4,2,0].map(t=>o`<i data-step=${t}></i>`)}</span>`;return o`<p class="quiet" id="scale">Margin in dB of power: 0 is at the limit, + is room left, − is beyond
    it.</p>
      <div class="scale" role="img" aria-labelledby="scale">
        ${Oe.map((t,n)=>o`<span data-step=${n}>${Xr(n)}</span>`)}
      </div>
      <dl>
        ${this._row(o`<i class="levels"></i>`,"one line for each power level, named at the left of the row; the chosen one is outlined. The most cautious published figures count","unfolded")}
        ${this._row("?","undecided: the sources differ on which side of the limit it lies","unfolded")}
        ${this._row(e,"the ladder: one rung for each power level, lowest first, each in the colour of its own margin; the chosen one is underlined","folded")}
        ${this._row(o`<span class="range"><i></i></span>`,"range from the most cautious to the most generous published figures; the upright line is 0 dB. The cautious end is printed","folded")}
        ${this._row(o`<span class="undecided" data-step="3"><i data-step="5">?</i></span>`,"undecided: the sources differ on which side of the limit it lies","folded")}
        ${this._row(Is,"two ways to the heat limit differ by more than three times")}
        ${this.gates.map(t=>this._row(t.hard?ze(t):ht(t),Gu[t.id]??t.name,"",t.hard))}
        ${this.packed?this._row("◆","from a pack of yours or of the server"):u}
      </dl>`}_row(e,t,n="",a=!1){return o`<div class=${n}><dt data-step=${a?"refused":""}>${e}</dt><dd>${t}</dd></div>`}},Gu={te11:"refused: a second wave mode travels in the joint",no_figures:"refused: beyond every published figure",receive_only:"refused: made for receiving only",no_heat_room:"refused: the air is as hot as the contact may get",immersion:"refused: not made for under water",customary_frequency:"above its customary frequency",weather:"not sealed for this weather",vibration:"coupling does not suit this vibration",wear:"wears out: more swaps than it is made for",cable_fit:"not made for this cable diameter",cold:"too cold",house:"refused: above a limit the station set itself, from a pack"};customElements.define("jw-legend",wi);var B0={ArrowUp:[-1,0],ArrowDown:[1,0],ArrowLeft:[0,-1],ArrowRight:[0,1]},U0=(s,e,t)=>Math.min(Math.max(s,e),t);function F0({key:s,ctrlKey:e},[t,n],a,i){let r=t===-1?0:-1;if(s==="Home")return e?[0,0]:[t,r];if(s==="End")return e?[a-1,i-1]:[t,i-1];if(!(s in B0))return;let[l,c]=B0[s],h=[U0(t+l,-1,a-1),U0(n+c,-1,i-1)];return h[0]===-1&&h[1]===-1?[t,n]:h}var xi=s=>s.refusedBy?"refused":R(s.margin),D0=(s,e)=>s.marks.map(ht).join("")+(e?Is:"");function Vu(s,e){let t=D0(s,e&&s.disagrees),n=s.refusedBy?ze(s.refusedBy):S(s.margin);return o`<span class="rung" data-power=${s.power} data-step=${xi(s)} ?data-chosen=${e}
    ?data-undecided=${s.undecided}>${t?o`<small>${t}</small>`:u}${n}</span>`}var G0=(s,e)=>o`<span class="rungs" aria-hidden="true">${s.map((t,n)=>Vu(t,n===e))}</span>`;function V0(){let s={power:0,margin:0,marks:[]};Ke(G0([s,{...s,disagrees:!0}],1),document.createDocumentFragment())}var Ku=s=>s.refusedBy?u:o`<i class=${W0(s.margin,s.high)}></i>`,Yu=(s,e)=>({ladder:P0(e.map(xi),s.refusedBy!==void 0),letters:D0(s,s.disagrees)||u,high:s.undecided?R(s.high):u}),Xu={ladder:u,letters:u,high:u};function K0({matrix:s,f:e,c:t,p:n,shows:a,focusable:i,open:r,unfolded:l}){let c=s.powers_w.map((C,F)=>mt(s,e,t,F)),h=c[n],b=T0(h,a),{ladder:_,letters:$,high:k}=l?Xu:Yu(h,c);return o`<td data-family=${h.family.id} data-band=${h.column.id} data-power=${h.power} ?data-open=${r}>
    <button class=${_} data-letters=${$} data-high=${k} data-row=${e} data-column=${t}
      tabindex=${i?0:-1} aria-label=${C0(h)}
      data-step=${xi(h)} ?data-undecided=${h.undecided}>
      <span class=${b.length>5?"number long":"number"}>${b}</span>
      ${l?G0(c,n):Ku(h)}
    </button>
  </td>`}var Y0=()=>o`<td><span class="empty"></span></td>`;var X0=s=>s?`, from pack ${s}`:"",Bs=matchMedia(Vt.cssText),Zu=46,Ju=50,yi=class extends p({matrix:f(d),power:{type:Number},shows:{type:String},opened:{...f(d),hasChanged:(e,t)=>e.family!==t?.family||e.column!==t?.column},outdated:{type:String},_at:w(d),_unfolded:w(d)}){static styles=[g,...H0,I];constructor(){super(),this.opened={},this.outdated="",this._at=[0,0],this._unfolded=Bs.matches,this._turned=()=>this._unfolded=Bs.matches,this._printed=()=>this._unfoldForPaper(),this._watch=new ResizeObserver(()=>this._measure()),this._scrolled=()=>this._carry()}connectedCallback(){super.connectedCallback(),this._watch.observe(this),this._turned(),Bs.addEventListener("change",this._turned),window.addEventListener("beforeprint",this._printed),window.addEventListener("afterprint",this._turned),window.addEventListener("scroll",this._scrolled,{passive:!0})}disconnectedCallback(){super.disconnectedCallback(),this._watch.disconnect(),Bs.removeEventListener("change",this._turned),window.removeEventListener("beforeprint",this._printed),window.removeEventListener("afterprint",this._turned),window.removeEventListener("scroll",this._scrolled)}willUpdate(e){if(!e.has("matrix"))return;let[t,n]=this._at;this._at=[Math.min(t,this.matrix.families.length-1),Math.min(n,this.matrix.columns.length-1)]}firstUpdated(){V0()}updated(e){e.has("matrix")&&e.get("matrix")?.columns.length!==this.matrix.columns.length&&this._measure()}render(){let{families:e,columns:t,powers_w:n}=this.matrix,a=n.indexOf(this.power)/Math.max(n.length-1,1);return o`<p id="outdated" role="status">${this.outdated}</p>
    <div class="frame" style="--columns:${t.length};--levels:${n.length};--chosen:${a*100}%">
      <table role="grid" aria-describedby="outdated" ?data-outdated=${this.outdated!==""} data-shows=${this.shows}
        aria-label=${this._caption} @keydown=${this._moved} @click=${this._clicked} @focusin=${this._focused}>
        <thead>
          <tr>
            <th><span class="unseen">Interface family</span></th>
            ${t.map((i,r)=>this._columnHead(i,r))}
          </tr>
        </thead>
        <tbody>
          ${e.map((i,r)=>o`<tr>${this._familyHead(i,r)}${t.map((l,c)=>this._cell(r,c))}</tr>`)}
        </tbody>
      </table>
    </div>`}get _caption(){return`Interface families against bands: ${this.shows==="margin"?`margin in dB at ${T(this.power)}`:"largest power that still holds, in W"}`}_columnHead(e,t){let[n,...a]=e.name.split(" ");return o`<th scope="col" data-band=${e.id}>
      <button data-row="-1" data-column=${t} tabindex=${this._tab(-1,t)}
        aria-label="${e.name}, all limits${X0(e.pack)}">
        <span>${n} <small>${a.join(" ")}${On(e.pack)}</small></span>
      </button>
    </th>`}_familyHead(e,t){return o`<th scope="row" data-family=${e.id}>
      <button data-row=${t} data-column="-1" tabindex=${this._tab(t,-1)}
        aria-label="${e.name}, data sheet${X0(e.pack)}">
        <span>${e.name}${On(e.pack)}</span>
        <span class="powers" aria-hidden="true">
          <span class="largest">largest, W</span>
          ${this.matrix.powers_w.map(n=>o`<span ?data-chosen=${n===this.power}>${T(n)}</span>`)}
        </span>
      </button>
    </th>`}_cell(e,t){let{matrix:n,shows:a,opened:i}=this,r=n.powers_w.indexOf(this.power);if(n.margin_db===void 0||r===-1)return Y0();let l=i.family===n.families[e].id&&i.column===n.columns[t].id;return K0({matrix:n,f:e,c:t,p:r,shows:a,open:l,unfolded:this._unfolded,focusable:this._tab(e,t)===0})}_tab(e,t){return e===this._at[0]&&t===this._at[1]?0:-1}_unfoldForPaper(){this._unfolded=!0,this.isUpdatePending&&this.performUpdate()}_measure(){let e=parseFloat(getComputedStyle(H(this.renderRoot,"table")).minWidth);this.toggleAttribute("fits",e<=this.clientWidth),this._carry()}_carry(){let e=H(this.renderRoot,".frame"),{top:t,height:n}=e.getBoundingClientRect(),a=n-Zu-Ju;e.style.setProperty("--lift",`${this.hasAttribute("fits")?0:Math.max(0,Math.min(-t,a))}px`)}_moved(e){let{families:t,columns:n}=this.matrix,a=F0(e,this._at,t.length,n.length);a!==void 0&&(e.preventDefault(),this._button(a)?.focus())}_button([e,t]){return this.renderRoot.querySelector(`button[data-row="${e}"][data-column="${t}"]`)}_focused(e){let{row:t,column:n}=e.target.dataset;t!==void 0&&(this._at=[Number(t),Number(n)])}_clicked(e){let t=e.target.closest("button");if(!t)return;let[n,a]=[Number(t.dataset.row),Number(t.dataset.column)],i=e.target.closest(".rung"),r={family:this.matrix.families[n],column:this.matrix.columns[a],power:i?Number(i.dataset.power):this.power};this.dispatchEvent(new CustomEvent("jw-open",{detail:r,bubbles:!0,composed:!0}))}};customElements.define("jw-matrix",yi);var $i=class extends p({powers:f(d),chosen:{type:Number},shows:{type:String}}){static styles=[g,m`
      :host { display: flex; flex-wrap: wrap; gap: 8px 20px; align-items: end; }
      fieldset { margin: 0; padding: 0; border: 0; min-width: 0; }
      legend { font-size: 0.8rem; font-weight: 600; padding: 0; margin-bottom: 3px; }
      div { display: flex; flex-wrap: wrap; }
      label {
        display: grid; place-items: center; min-height: var(--target); min-width: var(--target); padding: 0 11px;
        border: 1px solid var(--edge); margin-left: -1px; background: var(--card); cursor: pointer; white-space: nowrap;
      }
      label:first-of-type { border-radius: var(--round) 0 0 var(--round); margin-left: 0; }
      label:last-of-type { border-radius: 0 var(--round) var(--round) 0; }
      label:has(:checked) {
        background: var(--accent); border-color: var(--accent); color: var(--accent-ink); position: relative;
      }
      label:has(:focus-visible) {
        outline: 3px solid var(--accent); outline-offset: 2px; z-index: 1; position: relative;
      }
      input { position: absolute; opacity: 0; pointer-events: none; }
      @media (max-width: 420px) { label { padding: 0 8px; font-size: 0.9rem; } }
    `];render(){let e=[["margin","margin, dB"],["largest","largest power, W"]];return o`<fieldset id="power_w">
        <legend>Power in the cells</legend>
        <div>${this.powers.map(t=>this._option("power_w",t,T(t),t===this.chosen))}</div>
      </fieldset>
      <fieldset id="shows">
        <legend>Cells print</legend>
        <div>${e.map(([t,n])=>this._option("shows",t,n,t===this.shows))}</div>
      </fieldset>`}_option(e,t,n,a){return o`<label>
      <input type="radio" name=${e} value=${t} .checked=${a}
        @change=${()=>this._change({[e]:t})}>${n}
    </label>`}_change(e){this.dispatchEvent(new CustomEvent("jw-change",{detail:{changes:e,live:!1},bubbles:!0,composed:!0}))}};customElements.define("jw-power-choice",$i);var vi=[{id:"club_hf",name:"Club station HF",story:"Invented: a contest club with a kilowatt amplifier, digital weekends, masts in the weather.",fields:{bands:["160m","80m","60m","40m","30m","20m","17m","15m","12m","10m"],powers_w:[0,100,400,750,1e3,1500],power_w:1e3,mode:"rtty",vswr:2,exposure:"exposed",added_sealing:!0,matings_per_year:20,service_life_years:15,ambient_temperature_c:35,solar_irradiance_w_per_m2:800}},{id:"vhf_uhf",name:"2 m / 70 cm",story:"Invented: a repeater-style FM station in a car and at home, long overs.",fields:{bands:["6m","2m","70cm","23cm"],powers_w:[0,5,25,50,100,300],power_w:50,mode:"fm",vswr:1.5,vibration:"vehicle",exposure:"sheltered",ambient_temperature_c:50,matings_per_year:50}},{id:"microwave_bench",name:"23 cm / 3 cm portable bench",story:"Invented: hilltop microwave gear on a trestle table, plugged and unplugged on every outing.",fields:{bands:["70cm","23cm","13cm","5cm","3cm"],powers_w:[0,.2,1,5,20,100],power_w:5,mode:"cw",vswr:1.3,exposure:"sheltered",altitude_m:1500,ambient_temperature_c:25,matings_per_year:150,condition:"worn",return_loss_asked_db:16}}];var Qu=(s,e)=>Object.entries(e).every(([t,n])=>JSON.stringify(s[t])===JSON.stringify(n)),ki=class extends p({state:f(d)}){static styles=[g,m`
      :host { container-type: inline-size; }
      .try { padding-left: 4px; }
      @container (max-width: 640px) { .try { display: none; } }
      div { display: flex; flex-wrap: wrap; gap: 6px; align-items: center; }
      button { font-size: 0.82rem; border-radius: 99px; padding: 0 11px; }
      .story { flex-basis: 100%; }
    `];render(){let e=vi.find(({fields:t})=>Qu(this.state,t));return o`<div role="group" aria-label="Invented example stations">
      <span class="quiet try">Invented stations</span>
      ${vi.map(t=>o`<button data-preset=${t.id} aria-pressed=${t===e}
          @click=${()=>this._choose(t)}>
          ${t.name}
        </button>`)}
      <button data-preset="first" @click=${()=>this._choose({fields:{}})}>Reset</button>
      ${e?o`<span class="quiet story">${e.story}</span>`:u}
    </div>`}_choose({fields:e}){this.dispatchEvent(new CustomEvent("jw-preset",{detail:{fields:e},bubbles:!0,composed:!0}))}};customElements.define("jw-presets",ki);var Si=[["bands","Bands and powers",["powers_w","power_is","region","frequencies_hz","bands"]],["families","Families",["families"]],["keying","Keying",["keying","transmit_share","on_time_s","off_time_s"]],["line","Line and cable",["system_impedance_ohm","return_loss_asked_db","cable_dielectric","cable_diameter_m"]],["site","Site",["solar_irradiance_w_per_m2","altitude_m","vibration","added_sealing"]],["wear","Wear",["matings_per_year","service_life_years","added_resistance_ohm"]]],eh=[{words:"all",value:null}],Z0=["mode","vswr","ambient_temperature_c","exposure","condition"],th={mode:{transmit_share:null,on_time_s:null,off_time_s:null},share:{transmit_share:.5,on_time_s:null,off_time_s:null},overs:{transmit_share:null,on_time_s:60,off_time_s:60}},Ei=class extends p({state:f(d),refusal:f(d),_open:w(d),_unfolded:{type:Boolean,attribute:"unfolded",reflect:!0}},v){static styles=[g,m`
      :host { container-type: inline-size; }
      .fields { display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; }
      .always { grid-template-columns: 1.4fr 1.35fr 1.35fr 1.2fr 1.2fr; }
      label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      /* a slider needs room for a finger to aim: three fields side by side, then two */
      @container (max-width: 1170px) {
        .always { grid-template-columns: repeat(6, 1fr); }
        .always > * { grid-column: span 2; }
        .always > :nth-child(n + 4) { grid-column: span 3; }
      }
      .wide { grid-column: 1 / -1; }
      .double { grid-column: span 2; }
      .groups { margin-top: 4px; display: flex; flex-wrap: wrap; gap: 6px; }
      .groups button { font-size: 0.85rem; }
      .groups .changed::after { content: ' •'; color: var(--accent); font-weight: 700; }
      .groups [aria-expanded='true'].changed::after { color: inherit; }
      .group { margin-top: 8px; padding: 10px 12px 4px; background: var(--sunk); border-radius: var(--round); }
      #conditions { display: none; }
      @media (max-width: 720px) {
        #conditions {
          display: grid; width: 100%; padding: 6px 36px 6px 12px; text-align: left; border: 0; position: relative;
        }
        #conditions::after { content: '▾'; position: absolute; right: 14px; top: 50%; translate: 0 -50%; }
        #conditions[aria-expanded='true']::after { content: '▴'; }
        #conditions small { opacity: 0.8; font-size: 0.78rem; line-height: 1.3; }
        #conditions-form { padding: 8px 12px; }
        :host(:not([unfolded])) #conditions-form { display: none; }
        .always { grid-template-columns: 1fr 1fr; }
        .always > :nth-child(2), .always > :nth-child(3) { grid-column: 1 / -1; }
        .always > :nth-child(n + 4) { grid-column: auto; }
      }
      @media (max-width: 420px) { .double { grid-column: 1 / -1; } }
    `];constructor(){super(),this._open="",this._unfolded=!1}willUpdate(e){if(!e.has("refusal")||!this.refusal)return;let t=Si.find(([,,n])=>n.includes(this._refused));t&&(this._open=t[0]),this._refused in this.state&&(this._unfolded=!0)}render(){let e=Si.find(([t])=>t===this._open);return o`<button id="conditions" aria-expanded=${this._unfolded} aria-controls="conditions-form"
        @click=${()=>this._unfolded=!this._unfolded}>
        <span>Conditions</span><small>${Z0.map(t=>this._inWords(t)).join(" · ")}</small>
      </button>
      <div id="conditions-form">
      <div class="fields always">${Z0.map(t=>this._field(t))}</div>
      <div class="groups" role="group" aria-label="More conditions">
        ${Si.map(([t,n,a])=>o`<button aria-expanded=${t===this._open} aria-controls="group" data-group=${t}
            class=${a.some(i=>this._differs(i))?"changed":""}
            @click=${this._toggle}>${n}</button>`)}
      </div>
      <div id="group" class=${e?"fields group":""}>
        ${e?e[2].map(t=>this._field(t)):u}
      </div>
      </div>`}get _refused(){return J(this.refusal)}get _bands(){return this.vocabulary.lists.bands.map(e=>({...e,hidden:!e.regions.includes(String(this.state.region))}))}get _sets(){let e=this._bands.filter(({hidden:t})=>!t).map(({id:t})=>t);return[{words:"usual sixteen",value:this.vocabulary.first.matrix.bands},{words:"all",value:e}]}get _keying(){return this.state.transmit_share!==null?"share":this.state.on_time_s===null&&this.state.off_time_s===null?"mode":"overs"}_differs(e){return e in this.state&&JSON.stringify(this.state[e])!==JSON.stringify(this.vocabulary.first.matrix[e])}_field(e){let t=this.state[e],n=this.refusal&&this._refused===e?this.refusal.message:"";return e==="keying"?this._keyingField():e==="transmit_share"&&this._keying!=="share"?u:e.endsWith("time_s")&&this._keying!=="overs"?u:e==="bands"?o`<jw-toggles-field class="wide" name="bands" of=" of Region ${this.state.region}"
        .choices=${this._bands} .sets=${this._sets}
        hint="National limits differ from the Region’s edges; yours decide." .value=${t}
        .error=${n}></jw-toggles-field>`:e==="families"?o`<jw-toggles-field class="wide" name="families" .choices=${this.vocabulary.lists.families}
        .sets=${eh}
        hint="Pick those you own or can buy; the others leave the matrix." .value=${t}
        .error=${n}></jw-toggles-field>`:e==="powers_w"?o`<jw-list-field class="double" name="powers_w" zero="receive" .value=${t}
        .error=${n}></jw-list-field>`:e==="frequencies_hz"?o`<jw-list-field class="double" name="frequencies_hz" .value=${t} .error=${n}></jw-list-field>`:e==="added_sealing"?o`<jw-switch-field name="added_sealing" .value=${t} .error=${n}></jw-switch-field>`:typeof this.vocabulary.first.matrix[e]=="string"||e==="region"?o`<jw-choice-field name=${e} .value=${t} .error=${n}
        .hint=${this._hint(e)}></jw-choice-field>`:o`<jw-number-field name=${e} .value=${t} .error=${n}></jw-number-field>`}_inWords(e){let t=this.vocabulary.spoken(e,this.state[e]);return e==="vswr"?`VSWR ${t}`:t}_hint(e){let t=this.vocabulary.lists.modes.find(({id:n})=>n===this.state.mode);return e==="mode"&&t?`duty factor ${t.duty_factor.value}`:""}_keyingField(){return o`<div class="double">
      <label for="keying">How long it is on the air</label>
      <select id="keying" @change=${this._rekey}>
        ${[["mode","the mode’s own rhythm"],["share","a share of the time"],["overs","overs and pauses"]].map(([e,t])=>o`<option value=${e} .selected=${e===this._keying}>${t}</option>`)}
      </select>
    </div>`}_rekey(e){let t={changes:th[e.target.value],live:!1};this.dispatchEvent(new CustomEvent("jw-change",{detail:t,bubbles:!0,composed:!0}))}_toggle(e){let{group:t}=e.currentTarget.dataset;this._open=this._open===t?"":t}};customElements.define("jw-scenario",Ei);var ji=class extends p({state:f(d)},v){static styles=[g,m`
      dl { columns: 4; column-gap: 5mm; font-size: 7pt; line-height: 1.3; }
      div { break-inside: avoid; }
      dt, dd { display: inline; }
      dt { color: var(--soft); }
      dt::after { content: ': '; }
    `];render(){let e=Object.keys(this.vocabulary.words).filter(t=>(this.state[t]??[]).length!==0);return o`<dl>
      ${e.map(t=>o`<div><dt>${this.vocabulary.labelOf(t)}</dt><dd>${this.vocabulary.spoken(t,this.state[t])}</dd
            ></div>`)}
    </dl>`}};customElements.define("jw-summary",ji);var sh=[["family",s=>s.family.name],["band",s=>s.column.name],["low_hz",s=>s.column.low_hz],["high_hz",s=>s.column.high_hz],["power_w",s=>s.power],["margin_db",s=>s.margin],["margin_high_db",s=>s.high],["set_by",s=>s.limit],["computed_at_hz",s=>s.column.high_hz],["undecided",s=>s.undecided],["refused_by",s=>s.refusedBy?.name],["marks",s=>s.marks.map(e=>e.name).join("; ")],["largest_power_w",s=>s.largest],["family_from_pack",s=>s.family.pack],["band_from_pack",s=>s.column.pack]];function J0(s){let e=s.families.flatMap((t,n)=>s.columns.flatMap((a,i)=>s.powers_w.map((r,l)=>mt(s,n,i,l))));return Ae(sh,e)}var Q0={link:()=>Z(),csv:async s=>M("jointwise-matrix.csv","text/csv",J0(s)),json:async(s,e)=>Xe("jointwise-matrix.json",{request:e,result:s}),print:async()=>window.print()},ed=new Set(["csv","json"]);var Kt=class extends p({file:{type:String},loadCharts:f(d),loadEmbed:f(d),_state:w(d)},Y){static view="matrix";constructor(){super(),this.file="",this._matrix=this._enquiry("matrix"),this._cell=this._enquiry("cell"),this._catalogue=this._enquiry("catalogue")}_begin(){this._state=this._first}get _first(){return this.vocabulary.first.matrix}createRenderRoot(){return this}updated(e){this.toggleAttribute("beside",Ns(this._state)!==void 0),this.transport!==void 0&&(e.has("_state")||e.has("transport"))&&this._askAll()}render(){let{_state:e,_shown:t}=this,n=Ns(e);return o`<div @jw-change=${this._changed} @jw-preset=${this._preset}
        @jw-open=${this._opened} @jw-close=${()=>this._change(ut)} @jw-export=${this._exported}>
      ${this._progress(this._matrix)}
      <main>
        ${this._trouble()}
        <div class="bar tools"><jw-presets .state=${e}></jw-presets><jw-exports
          file=${this.file}></jw-exports></div>
        <jw-scenario .state=${e} .refusal=${this._matrix.error}></jw-scenario>
        <div class="bar">
          <jw-power-choice .powers=${t.powers_w} .chosen=${this._power} .shows=${e.shows}></jw-power-choice>
        </div>
        <h2 class="onpaper">${e.shows==="margin"?`Margin in dB, at ${T(this._power)} where outlined`:"Margin in dB"}</h2>
        <jw-matrix .matrix=${t} .power=${this._power} .shows=${e.shows} .outdated=${this._outdated}
          .opened=${{family:e.family,column:Dt(e,t)?.id}}></jw-matrix>
        <section class="below">
          <jw-legend .gates=${D.matrix.gates}
            ?packed=${[...t.families,...t.columns].some(({pack:a})=>a)}></jw-legend>
          <jw-summary class="onpaper" .state=${this._computed}></jw-summary>
          <jw-cautions .cautions=${D.cautions}></jw-cautions>
        </section>
        ${this._withoutCore?o`<section class="tables"><slot></slot></section>`:u}
      </main>
      <jw-sheet .heading=${A0(n,e,t,this.vocabulary.lists)}>
        ${n?o`<jw-detail .kind=${n} .state=${e} .matrix=${t} .cell=${this._wantedCell}
              .catalogue=${this._catalogue.result} .error=${this._cell.error??this._catalogue.error}
              .power=${this._power} .loadCharts=${this.loadCharts} .loadEmbed=${this.loadEmbed}
              .transport=${this.transport}></jw-detail>`:u}
      </jw-sheet>
    </div>`}get _shown(){return this._matrix.result??j0(this._state,this._refused,this.vocabulary)}get _refused(){return this._matrix.error!==void 0}get _outdated(){return!this._refused||this._asksTheSame(this._computed,this._state)?"":this._matrix.result?"Out of date: these are the numbers from before the change that could not be computed.":"Not what was asked for, which could not be computed: these are the built-in numbers of a first visit."}_asksTheSame(...e){let[t,n]=e.map(a=>JSON.stringify($e(a,this.vocabulary)));return t===n}get _withoutCore(){return this._matrix.result===void 0&&Ut(this._matrix.error)}get _power(){return Vr(this._shown.powers_w,this._state.power_w)}get _computed(){let{answered:e}=this._matrix;return!e&&!this._refused?this._state:{...this._first,power_w:this._state.power_w,...e}}get _wantedCell(){let{answered:e,result:t}=this._cell;return e&&ii(e,this._state)?t:void 0}_trouble(){let{error:e}=this._matrix;return!e||J(e)in this.vocabulary.words?u:o`<p class="trouble" role="alert">${e.message} <button
      @click=${()=>this._askAll(!0)}>Try again</button></p>`}_askAll(e=!1){let t=$e(this._state,this.vocabulary),n=JSON.stringify(t);(e||n!==this._asked)&&this._matrix.askNext(t),this._asked=n;let a=Ns(this._state);a&&a!=="website"&&["initial","error"].includes(this._catalogue.status)&&this._catalogue.ask({}),a==="derivation"&&this._askCell()}_askCell(){let e=Ft({...this._state,power_w:this._power}),t=this._cellAsked;this._cellAsked=e,!(t&&this._cell.status!=="error"&&JSON.stringify(t)===JSON.stringify(e))&&(t&&ii(t,this._state)?this._cell.askNext(e):this._cell.ask(e))}_changed(e){this._change(e.detail.changes,e.detail.live)}_change(e,t=!1){this._state={...this._state,...e},t||this._address()}_address(){let e=Ee(this._state,this._first);e!==location.hash.slice(1)&&history.pushState(null,"",e?`#${e}`:location.pathname+location.search)}_preset(e){this._change({...this._first,shows:this._state.shows,...e.detail.fields})}_opened(e){let{family:t,column:n,power:a}=e.detail,i=n!==void 0&&ai(n);this._change({...ut,family:t?.id??null,band:n===void 0||i?null:n.id,frequency_hz:i?n.low_hz:null,power_w:a})}openMethods(){this._change({view:"methods"})}_restore(e){let t=cs(e,this.vocabulary.fields.matrix,this._first);this._state=t.state,this._notice(je(t.unknown))}async _exported(e){if(e.detail.kind==="website")return this._change({...ut,view:"website"});if(this._shown.margin_db===void 0&&ed.has(e.detail.kind)){this._notice({text:"The core is still at work on the numbers; try again when they are here."});return}this._notice(await Q0[e.detail.kind](this._shown,$e(this._computed,this.vocabulary)))}};customElements.define("jw-matrix-view",Kt);var td=({bands:s,cable_dielectrics:e,conditions:t,families:n,modes:a})=>({region:{label:"ITU Region",options:{1:"Region 1",2:"Region 2",3:"Region 3"}},families:{label:"Families",named:n},bands:{label:"Bands",named:s},frequencies_hz:{label:"Spot frequencies",factor:1e6,unit:"MHz"},powers_w:{label:"Power levels",unit:"W"},power_w:{label:"Power in the cells"},power_is:{label:"Powers are",options:{forward:"forward power",net:"net power (forward less reflected)"}},mode:{label:"Mode",entries:a},transmit_share:{label:"Share on the air",step:.01},on_time_s:{label:"One over",step:.01},off_time_s:{label:"Pause after it",step:.01},vswr:{label:"VSWR on the line",step:.1,slider:"logarithmic"},system_impedance_ohm:{label:"Line impedance",step:1},return_loss_asked_db:{label:"Return loss asked for",step:.5},cable_dielectric:{label:"Cable insulation",entries:e},cable_diameter_m:{label:"Cable diameter",step:.1,factor:.001,unit:"mm"},ambient_temperature_c:{label:"Air in the shade",step:1,slider:"linear"},solar_irradiance_w_per_m2:{label:"Sun on the joint",step:10},altitude_m:{label:"Altitude",step:10},exposure:{label:"Exposure",options:{indoor:"indoors",sheltered:"outdoors, sheltered",exposed:"outdoors, exposed",immersed:"under water"}},added_sealing:{label:"Taped or booted against water"},vibration:{label:"Vibration",options:{none:"none",vehicle:"vehicle",severe:"severe"}},matings_per_year:{label:"Swaps per year",step:1},service_life_years:{label:"Years in service",step:1},condition:{label:"Joint condition",entries:t},added_resistance_ohm:{label:"Added contact resistance",step:.001}});var sd={id:Kt.view,label:"Matrix",fields:k0,words:td,element:({transport:s,stage:e,file:t,loadCharts:n,loadEmbed:a})=>o`<jw-matrix-view class="view" .transport=${s} .stage=${e} .file=${t}
      .loadCharts=${n} .loadEmbed=${a}></jw-matrix-view>`};var{values:nh,kinds:ad,seen:id,house_limit:rd}=D.pack,Oi={name:"",version:"1",source:{title:"",seen:"read",address:"",kind:"datasheet"},powers:"",limits:[],family:null},od={power_w:50,reason:"",interfaces:[],bands:[]},Ai="own",ah=["low","high"],pt=s=>s.normalize("NFKD").toLowerCase().replace(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,40)||"pack",nd=s=>typeof s?.value=="number"&&typeof s.source=="string";function ld(s){return Object.entries(nh).flatMap(([e,t])=>{let n=s[e];return nd(n)?[{field:e,end:"",value:n.value,...t}]:ah.filter(a=>nd(n?.[a])).map(a=>({field:e,end:a,value:n[a].value,...t}))})}function dd({field:s,end:e}){let t=s.replace(/_(ohm|m2|m|hz|rms_v|c|s|nm|matings)$/,"").replaceAll("_"," "),n=(t[0].toUpperCase()+t.slice(1)).replace(/vswr/i,"VSWR");return e?`${n}, ${e==="low"?"least":"most"}`:n}function ih({entry:s,numbers:e,id:t,name:n},a){let i=structuredClone({...s,id:t,name:n});for(let{field:r,end:l,value:c}of e){let h=l?i[r]:i,b=l||r;h[b].value!==c&&(h[b]={value:c,source:Ai,kind:a,note:""})}return i}function rh({name:s,version:e,source:t,powers:n,limits:a,family:i}){let{kind:r,...l}=t,c=pt(s),h=i&&i.id===i.entry.id?{interfaces:[i.id]}:{};return{id:c,name:s,version:e,sources:[{id:Ai,...l}],overrides:h,interfaces:i?[ih(i,r)]:[],default_powers_w:n.split(/[\s,;]+/).filter(Boolean).map(Number),house_limits:a.map((b,_)=>({...b,id:`${c.slice(0,34)}_${_+1}`,source:Ai,kind:r}))}}var Ti=s=>`${JSON.stringify(rh(s),null,2)}
`;var oh=[],Ci=class extends p({transport:f(d),_draft:w(d),_problem:w(d)}){static styles=[g,de,j,m`
      label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      h3 { margin: 14px 0 6px; }
      .bar { display: flex; flex-wrap: wrap; gap: 8px; margin-top: 14px; }
      .limit { padding: 8px 0; border-bottom: 1px solid var(--line); }
      .numbers { grid-template-columns: repeat(auto-fill, minmax(210px, 1fr)); }
      select[multiple] { min-height: 7.5em; padding: 4px; }
      .changed label { color: var(--accent); }
    `];constructor(){super(),this._vocabulary=new Se(this,{context:At,subscribe:!0}),this._draft=Oi,this._problem=""}get _lists(){return this._vocabulary.value.lists}render(){let{name:e,version:t,source:n,powers:a,limits:i}=this._draft;return o`<details class="panel">
      <summary>Make a pack <small>limits of your station, default powers, a family of your own</small></summary>
      <form @submit=${this._made}>
        <div class="fields">
          ${this._text("name","Name of the pack",e,r=>this._put({name:r}),80,!0)}
          ${this._text("version","Version or date",t,r=>this._put({version:r}),40,!0)}
        </div>
        <h3>Source of everything in it</h3>
        <div class="fields">
          ${this._text("title","What it says, and where",n.title,r=>this._source({title:r}),300,!0,"wide")}
          ${this._choice("seen","You have",n.seen,id,r=>this._source({seen:r}))}
          ${this._choice("kind","Its figures are",n.kind,ad,r=>this._source({kind:r}))}
          ${this._text("address","Web address, if any",n.address,r=>this._source({address:r}),300,!1)}
        </div>
        <h3>Default powers</h3>
        <div class="fields">${this._text("powers","Power levels in W, with commas between",a,r=>this._put({powers:r}),200,!1,"wide")}</div>
        <h3>House limits</h3>
        ${i.map((r,l)=>this._limit(r,l))}
        <button type="button" id="add-limit" @click=${()=>this._put({limits:[...i,od]})}>Add a
        limit</button>
        <h3>A family</h3>
        ${this._family()}
        <p class="error" role="alert">${this._problem}</p>
        <div class="bar">
          <button id="take">Put it in force</button>
          <button type="button" id="save-draft" @click=${this._save}>Save as file</button>
          <button type="button" @click=${()=>this._draft=Oi}>Start again</button>
        </div>
      </form>
    </details>`}_text(e,t,n,a,i,r,l=""){return o`<div class=${l}><label for=${e}>${t}</label>
      <input id=${e} type="text" autocomplete="off" maxlength=${i} ?required=${r} .value=${n}
        @change=${c=>a(c.target.value.trim())}></div>`}_choice(e,t,n,a,i){return o`<div><label for=${e}>${t}</label>
      <select id=${e} @change=${r=>i(r.target.value)}>
        ${a.map(r=>o`<option value=${r} .selected=${r===n}>${r}</option>`)}
      </select></div>`}_limit(e,t){let n=l=>this._put({limits:this._draft.limits.with(t,{...e,...l})}),{min:a,max:i}=rd.power_w,{_lists:r}=this;return o`<div class="limit fields" role="group" aria-label="House limit ${t+1}">
      <div><label for="power-${t}">At most, in W PEP</label>
        <input id="power-${t}" type="number" step="any" min=${a} max=${i} required .value=${String(e.power_w)}
          @change=${l=>n({power_w:l.target.valueAsNumber})}></div>
      ${this._text(`reason-${t}`,"Because",e.reason,l=>n({reason:l}),300,!0)}
      ${this._several(`families-${t}`,"Through (none chosen: all)",r.families,e.interfaces,l=>n({interfaces:l}))}
      ${this._several(`bands-${t}`,"On (none chosen: all)",r.bands,e.bands,l=>n({bands:l}))}
      <button type="button" @click=${()=>this._put({limits:this._draft.limits.toSpliced(t,1)})}>Remove limit
      ${t+1}</button>
    </div>`}_several(e,t,n,a,i){return o`<div><label for=${e}>${t}</label>
      <select id=${e} multiple @change=${({target:r})=>i([...r.selectedOptions].map(l=>l.value))}>
        ${n.map(r=>o`<option value=${r.id} .selected=${a.includes(r.id)}>${r.name}</option>`)}
      </select></div>`}_family(){let{family:e}=this._draft;return o`<div class="fields">
        <div><label for="copied">Made from</label>
          <select id="copied" @change=${t=>this._copy(t.target.value)}>
            <option value="" .selected=${!e}>none</option>
            ${this._lists.families.map(({id:t,name:n})=>o`<option value=${t} .selected=${e?.entry.id===t}>${n}</option>`)}
          </select></div>
        ${e?o`<div><label for="replaces">It</label>
              <select id="replaces" @change=${t=>this._rename(e,t.target.value==="yes")}>
                <option value="no" .selected=${e.id!==e.entry.id}>stands beside the built-in one</option>
                <option value="yes" .selected=${e.id===e.entry.id}>takes its place</option>
              </select></div>
              ${this._text("family-name","Its name",e.name,t=>this._called(e,t),80,!0)}`:u}
      </div>
      ${e?o`<p class="quiet">A number you change has your source; the others keep theirs.</p><div
            class="fields numbers">${e.numbers.map((t,n)=>this._number(t,n))}</div>`:u}`}_number(e,t){let n=`${e.field}${e.end&&`-${e.end}`}`;return o`<div><label for=${n}>${dd(e)}${e.unit==="1"?"":`, ${e.unit}`}</label>
      <input id=${n} type="number" step="any" min=${e.min} max=${e.max} required .value=${String(e.value)}
        @change=${a=>this._renumber(t,a.target.valueAsNumber)}></div>`}_renumber(e,t){let{numbers:n}=this._draft.family;this._changeFamily({numbers:n.with(e,{...n[e],value:t})})}async _copy(e){if(this._problem="",e==="")return this._put({family:null});try{let{entry:t}=await this.transport.ask("catalogue",{entry:e},{packs:oh}),n=`${t.name}, own`;this._put({family:{entry:t,id:pt(n),name:n,numbers:ld(t)}})}catch(t){this._problem=t.message}}_called(e,t){this._changeFamily(e.id===e.entry.id?{name:t}:{name:t,id:pt(t)})}_rename({entry:e},t){let n=t?e.name:`${e.name}, own`;this._changeFamily({name:n,id:t?e.id:pt(n)})}_put(e){this._draft={...this._draft,...e}}_source(e){this._put({source:{...this._draft.source,...e}})}_changeFamily(e){this._put({family:{...this._draft.family,...e}})}_made(e){e.preventDefault(),x(this,"jw-pack-made",{text:Ti(this._draft),label:this._draft.name})}_save(){H(this.renderRoot,"form").reportValidity()&&M(`${pt(this._draft.name)}.json`,"application/json",Ti(this._draft))}};customElements.define("jw-pack-form",Ci);var lh={interfaces:"interface",cables:"cable",adapters:"adapter",matings:"mating",bands:"band",modes:"mode",house_limits:"house limit",default_powers_w:"default powers"},dh=s=>s.replaceAll("_"," ").replaceAll("."," ");function zi(s){let e=new Map;for(let t of s){let[,n,a="",i=""]=/^([^/]+)(?:\/([^.]+)(?:\.(.+))?)?$/.exec(t)??[],r=`${lh[n]} ${a}`.trim();e.set(r,[...e.get(r)??[],...i?[dh(i)]:[]])}return[...e].map(([t,n])=>n.length>0?`${t} (${n.join(", ")})`:t).join("; ")}var cd=D.pack.most_bytes,Yt=class extends p({transport:f(d),stage:{type:String},shelf:f(d),version:{type:Number},_over:w(d),_refused:w(d),_said:w(d),_busy:w(d)}){static view="packs";static styles=[g,ce,j,I,m`
      main { max-width: 1100px; margin: 0 auto; grid-template-columns: minmax(0, 1fr) !important; }
      .drop {
        margin-top: 8px; display: grid; gap: 6px; padding: 14px; border: 2px dashed var(--edge);
        border-radius: var(--round); background: var(--card);
      }
      .drop[data-over] { border-color: var(--accent); background: var(--accent-wash); }
      input[type='file'] { padding: 8px; width: 100%; }
      ::file-selector-button {
        font: inherit; padding: 4px 10px; color: var(--ink); background: var(--sunk); border: 1px solid var(--edge);
        border-radius: 6px;
      }
      ul { list-style: none; padding: 0; display: grid; gap: 10px; }
      li { padding: 12px 14px; background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      li[data-off] { border-style: dashed; }
      li header { display: flex; flex-wrap: wrap; gap: 4px 12px; align-items: center; }
      li h3 { flex: 1 1 12rem; overflow-wrap: anywhere; }
      li header button { font-size: 0.85rem; }
      p { overflow-wrap: anywhere; }
      #said { min-height: 1.4em; }
      .trouble b { overflow-wrap: anywhere; }
      @media print { .drop, jw-pack-form, li header button { display: none; } }
    `];constructor(){super(),this.stage="",this._said="",this._busy=!1,this._catalogue=new X(this,(e,t)=>this.transport.ask("catalogue",e,t))}updated(e){this.transport===void 0||this.shelf===void 0||(e.has("version")||e.has("transport"))&&this._catalogue.ask({})}render(){let{_refused:e}=this,t=this._busy?"pending":this._catalogue.status;return o`<jw-progress status=${t} stage=${this.stage===et?"":this.stage}></jw-progress>
      <main>
        <section class="panel">
          <h2>Packs</h2>
          <p>A pack holds entries of your own: interfaces, cables, bands, modes, default powers, and the limits your
            station sets itself. It stays in this browser. What comes from one is marked “from pack” wherever it shows;
            no formula is ever changed.</p>
          <div class="drop" ?data-over=${this._over} @dragover=${this._dragged} @dragleave=${()=>this._over=!1}
            @drop=${this._dropped}>
            <label for="file">Drop a pack file here, or choose one</label>
            <input id="file" type="file" accept=".json,application/json" @change=${this._picked}>
          </div>
          ${e?o`<p class="trouble" role="alert" id="refused">Nothing was changed. <b>${e}</b></p>`:u}
          <p class="quiet" role="status" id="said">${this._said}</p>
        </section>
        <section class="panel"><h2>On this page</h2>${this._list()}</section>
        <jw-pack-form .transport=${this.transport}
          @jw-pack-made=${({detail:n})=>this._take(n.text,n.label)}></jw-pack-form>
      </main>`}_list(){let{server:e=[],own:t=[]}=this.shelf??{};return e.length+t.length===0?o`<p class="quiet">None: everything shown is built in.</p>`:o`<ul>${e.map(n=>this._pack(n,!0))}${t.map(n=>this._pack(n,!1))}</ul>`}_pack(e,t){let n=t||e.on,a=this._catalogue.result?.packs.find(({id:i})=>i===e.id);return o`<li data-pack=${e.id} ?data-off=${!n}>
      <header>
        <h3>${e.name}</h3>
        ${t?o`<span class="quiet">of the server</span>`:o`<button class="turn" aria-pressed=${n} @click=${()=>this._turn(e)}>In force</button>`}
        <button class="save" aria-label="Save ${e.name} as a file"
          @click=${()=>M(`${e.id}.json`,"application/json",e.text)}>Save as file</button>
        ${t?u:o`<button class="remove" aria-label="Remove ${e.name}"
              @click=${()=>this._remove(e)}>Remove</button>`}
      </header>
      ${e.refused?o`<p class="error">Turned off: ${e.refused}</p>`:u}
      ${n&&a?this._told(a):u}
    </li>`}_told({version:e,note:t,added:n,changed:a}){return o`<p class="quiet">Version ${e}${t?o`. ${t}`:u}</p>
      ${n.length>0?o`<p>Adds ${zi(n)}.</p>`:u}
      ${a.length>0?o`<p>Changes ${zi(a)}.</p>`:u}`}_dragged(e){e.preventDefault(),this._over=!0}_dropped(e){e.preventDefault(),this._over=!1,this._read(e.dataTransfer.files[0])}async _picked({target:e}){await this._read(e.files[0]),e.value=""}async _read(e){if(e){if(e.size>cd){this._refuse(`${e.name} is ${e.size} bytes long; allowed: up to ${cd}.`);return}await this._take(await e.text(),e.name)}}async _take(e,t){this._refused=void 0,this._busy=!0,this._said="The core is looking at the pack…";try{await this.transport.ask("catalogue",{},{packs:this.shelf.with(e,t)}),this.shelf.put(e),this._said=`${t} is in force.`}catch(n){this._refuse(n.message)}this._busy=!1}_refuse(e){this._refused=e,this._said=""}_turn(e){if(!e.on)return this._take(e.text,e.name);this._refused=void 0,this.shelf.turn(e,!1),this._said=`${e.name} is off.`}_remove(e){this._refused=void 0,this.shelf.remove(e),this._said=`${e.name} is removed.`}};customElements.define("jw-packs-view",Yt);var fd={id:Yt.view,label:"Packs",element:({transport:s,stage:e,shelf:t,version:n})=>o`<jw-packs-view class="view" .transport=${s} .stage=${e} .shelf=${t}
      .version=${n}></jw-packs-view>`};var ch=["short","open","matched","antenna"],ud=({requests:{sweep:s}})=>({sweep:{length_tolerance:s.length_tolerance,window_shape:s.window_shape,of:{type:"text",longest:20,default:"line",nullable:!1},end:{type:"choice",choices:ch,default:"short",nullable:!1}}});var hd=200,md={format:"jointwise sweeps",version:1,key:"sweeps"},pd={line:60,name:200,verdict:2e3,text:8e6},fh=/^\d{4}-\d{2}-\d{2}$/;function gd({date:s,line:e,file:t,result:n}){let a=(n.line?.joints??[]).map(({element:i,name:r,excess:l})=>({element:i,name:r,excess:l}));return{date:s,line:e,ports:n.ports,name:t.name,text:t.text,verdict:n.verdict,joints:a,resistance_ohm:n.part?.resistance_ohm??null}}function Ri(s,e){return[...s.filter(({line:n,date:a,name:i})=>n!==e.line||a!==e.date||i!==e.name),e].sort((n,a)=>n.date.localeCompare(a.date)).slice(-hd)}function bd(s,e){let t=s.filter(l=>l.line===e),n=t.filter(({ports:l})=>l===2);if(n.length>1)return{title:"resistance, Ω",series:[{name:"in series",dates:n.map(({date:l})=>l),values:n.map(({resistance_ohm:l})=>l)}]};let a=t.filter(({ports:l})=>l===1);return a.length<2?void 0:{title:"excess reflection",series:[...new Map(a.flatMap(l=>l.joints.map(({element:c,name:h})=>[c,h])))].map(([l,c])=>({name:`${l+1} · ${c}`,dates:a.map(({date:h})=>h),values:a.map(h=>h.joints.find(b=>b.element===l)?.excess??null)}))}}var _d=(s,e)=>{e!==null&&!Number.isFinite(e)&&B(s,e,"a number or null")};function uh(s,e){let{element:t,name:n,excess:a}=V(s,e);return(!Number.isInteger(t)||t<0||t>59)&&B(`${s}.element`,t,"a whole number from 0 to 59"),zt(`${s}.name`,n,pd.line),_d(`${s}.excess`,a),{element:t,name:n,excess:a}}function Mi(s){return Q("sweeps",s,0,hd,"sweeps").map((e,t)=>{let n=`sweeps[${t}]`,{date:a,ports:i,joints:r,resistance_ohm:l,...c}=V(n,e);(typeof a!="string"||!fh.test(a)||Number.isNaN(Date.parse(a)))&&B(`${n}.date`,a,"a day as 2026-11-25"),i!==1&&i!==2&&B(`${n}.ports`,i,"1 or 2");for(let[b,_]of Object.entries(pd))zt(`${n}.${b}`,c[b],_);_d(`${n}.resistance_ohm`,l);let h=Q(`${n}.joints`,r,0,60,"joints").map((b,_)=>uh(`${n}.joints[${_}]`,b));return{date:a,line:c.line,ports:i,name:c.name,text:c.text,verdict:c.verdict,joints:h,resistance_ohm:l}})}var wd=s=>Os(md,s),xd=s=>Ts(md,s,Mi);var hh=["load","receiver","explain","power_w","band","frequency_hz"],yd=8e6,mh=(s,e)=>s==="antenna"?e.request.load:{kind:"end",what:s};function $d({end:s,length_tolerance:e,window_shape:t},n,a,i){return{...Object.fromEntries(Object.entries(n.request).filter(([l])=>!hh.includes(l))),load:mh(s,n),touchstone:a.text,...Be({length_tolerance:e,window_shape:t,earlier:i?.text})}}function vd({name:s,size:e}){return e<=yd?"":`${s} has ${(e/1e6).toFixed(0)} MB; allowed: a Touchstone file of at most ${yd/1e6} MB.`}var Li=class extends p({name:{type:String},label:{type:String},held:{type:String},error:{type:String},_problem:w(d),_over:w(d)}){static styles=[g,m`
      label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      .drop {
        position: relative; display: grid; place-content: center; min-height: 76px; padding: 8px 12px;
        text-align: center; font-size: 0.9rem; overflow-wrap: anywhere;
        border: 2px dashed var(--edge); border-radius: var(--round); background: var(--card);
      }
      .drop:hover, .over { border-color: var(--accent); }
      .drop:focus-within { outline: 3px solid var(--accent); outline-offset: 2px; }
      .drop.bad { border-color: var(--alarm); }
      input { position: absolute; inset: 0; width: 100%; height: 100%; opacity: 0; cursor: pointer; }
      .under { display: block; min-height: 1.35em; margin-top: 2px; font-size: 0.8rem; color: var(--soft); }
      .under.error { color: var(--alarm); font-weight: 600; }
    `];constructor(){super(),Object.assign(this,{held:"",error:"",_problem:"",_over:!1})}render(){let e=this._problem||this.error;return o`<label for=${this.name}>${this.label}</label>
      <div class="drop ${e?"bad":""} ${this._over?"over":""}" @dragenter=${()=>this._over=!0}
        @dragleave=${()=>this._over=!1} @drop=${()=>this._over=!1}>
        <b>${this.held||"Drop the file here, or tap to pick it"}</b>
        <span class="quiet">Touchstone, .s1p or .s2p</span>
        <input id=${this.name} type="file" accept=".s1p,.s2p,.ts,.txt"
          aria-invalid=${e?"true":"false"} aria-describedby="under" @change=${this._picked}>
      </div>
      <span id="under" class=${e?"under error":"under"} role=${e?"alert":"note"}>
        ${e||"It stays on this device, unless the page asks a server."}
      </span>`}async _picked({target:e}){let[t]=e.files;if(!t)return;this._problem=vd(t);let n=this._problem?void 0:await t.text();e.value="",n!==void 0&&x(this,"jw-sweep-file",{name:this.name,file:{name:t.name,text:n}})}};customElements.define("jw-sweep-file",Li);var Us={line:{name:"Hill hut, invented",elements:[{kind:"joint",family:"n",name:"Shack panel"},{kind:"cable",cable:"rg_223",length_m:3},{kind:"joint",family:"n",name:"Wall"},{kind:"cable",cable:"rg_213",length_m:17},{kind:"joint",family:"n",name:"Mast foot"},{kind:"cable",cable:"rg_213",length_m:9},{kind:"joint",family:"n",name:"Mast top"}],load:{kind:"end",what:"short"},file:{name:"hill-hut.s1p",text:`! Invented: a line with its far end shorted, made by a script
# MHz S RI R 50
2.5 0.0401 -0.9228
5 0.9201 0.0756
7.5 -0.1081 0.8577
10 -0.8212 -0.1429
12.5 0.1806 -0.8250
15 0.8110 0.2150
17.5 -0.2461 0.7824
20 -0.7544 -0.2741
22.5 0.2963 -0.7270
25 0.7067 0.3313
27.5 -0.3636 0.7055
30 -0.6689 -0.3830
32.5 0.3992 -0.6254
35 0.6156 0.4278
37.5 -0.4589 0.6012
40 -0.5677 -0.4778
42.5 0.4885 -0.5286
45 0.5081 0.4986
47.5 -0.5341 0.4881
50 -0.4669 -0.5580
52.5 0.5458 -0.4303
55 0.3870 0.5531
57.5 -0.5872 0.3803
60 -0.3593 -0.6139
62.5 0.5968 -0.3086
65 0.2817 0.5942
67.5 -0.6113 0.2671
70 -0.2329 -0.6435
72.5 0.6359 -0.2011
75 0.1777 0.6110
77.5 -0.6180 0.1488
80 -0.1160 -0.6466
82.5 0.6432 -0.0862
85 0.0568 0.6238
87.5 -0.6183 0.0400
90 -0.0120 -0.6363
92.5 0.6339 0.0396
95 -0.0480 0.6193
97.5 -0.5957 -0.0560
100 0.1014 -0.5939
102.5 0.6080 0.1439
105 -0.1456 0.5851
107.5 -0.5536 -0.1694
110 0.1912 -0.5560
112.5 0.5526 0.2248
115 -0.2565 0.5357
117.5 -0.5228 -0.2529
120 0.2666 -0.4905
122.5 0.4840 0.3143
125 -0.3386 0.4866
127.5 -0.4531 -0.3244
130 0.3516 -0.4159
132.5 0.4204 0.3822
135 -0.3909 0.4111
137.5 -0.3696 -0.4059
140 0.4080 -0.3460
142.5 0.3434 0.4192
145 -0.4486 0.3155
147.5 -0.3039 -0.4627
150 0.4502 -0.2682
152.5 0.2435 0.4622
155 -0.4825 0.2402
157.5 -0.2147 -0.4844
160 0.4906 -0.1696
162.5 0.1697 0.4917
165 -0.4911 0.1611
167.5 -0.1016 -0.5127
170 0.5153 -0.0799
172.5 0.0898 0.4927
175 -0.4941 0.0544
177.5 -0.0209 -0.5121
180 0.5084 -0.0001
182.5 -0.0189 0.4865
185 -0.4886 -0.0173
187.5 0.0539 -0.4845
190 0.4928 0.1109
192.5 -0.1004 0.4884
195 -0.4565 -0.0844
197.5 0.1478 -0.4472
200 0.4665 0.1795
202.5 -0.1694 0.4548
205 -0.4158 -0.1799
207.5 0.2037 -0.4183
210 0.4164 0.2373
212.5 -0.2556 0.3967
215 -0.3939 -0.2470
217.5 0.2527 -0.3578
220 0.3446 0.3104
222.5 -0.3151 0.3598
225 -0.3248 -0.2926
227.5 0.3287 -0.2909
230 0.2991 0.3507
232.5 -0.3501 0.2922
235 -0.2453 -0.3607
237.5 0.3701 -0.2459
240 0.2387 0.3708
242.5 -0.3967 0.2064
245 -0.1922 -0.4040
247.5 0.3832 -0.1700
250 0.1496 0.4006
252.5 -0.4169 0.1576
255 -0.1164 -0.4080
257.5 0.4156 -0.0702
260 0.0984 0.4302
262.5 -0.4041 0.0870
265 -0.0219 -0.4158
267.5 0.4288 -0.0128
270 0.0346 0.4076
272.5 -0.4036 -0.0057
275 0.0300 -0.4201
277.5 0.4110 0.0600
280 -0.0640 0.4023
282.5 -0.3937 -0.0434
285 0.0917 -0.3805
287.5 0.3836 0.1547
290 -0.1237 0.4062
292.5 -0.3555 -0.1040
295 0.1820 -0.3453
297.5 0.3666 0.2001
300 -0.1768 0.3523
302.5 -0.3180 -0.1846
305 0.2093 -0.3220
307.5 0.3123 0.2365
310 -0.2576 0.3020
312.5 -0.2969 -0.2228
315 0.2443 -0.2594
317.5 0.2530 0.2934
320 -0.2900 0.2734
322.5 -0.2339 -0.2650
325 0.3021 -0.1943
327.5 0.2193 0.3233
330 -0.3132 0.2125
332.5 -0.1531 -0.3183
335 0.3259 -0.1611
337.5 0.1636 0.3267
340 -0.3462 0.1296
342.5 -0.1139 -0.3430
345 0.3318 -0.0899
347.5 0.0872 0.3571
350 -0.3573 0.0986
352.5 -0.0478 -0.3301
355 0.3530 -0.0033
357.5 0.0514 0.3648
360 -0.3365 0.0373
362.5 0.0409 -0.3436
365 0.3627 0.0338
367.5 -0.0077 0.3316
370 -0.3331 -0.0379
372.5 0.0671 -0.3374
375 0.3272 0.0978
377.5 -0.0949 0.3368
380 -0.3247 -0.0655
382.5 0.1219 -0.2905
385 0.3043 0.1759
387.5 -0.1314 0.3281
390 -0.2724 -0.1096
392.5 0.1948 -0.2559
395 0.2997 0.2133
397.5 -0.1688 0.2774
400 -0.2442 -0.1906
402.5 0.2109 -0.2538
405 0.2345 0.2372
407.5 -0.2457 0.2271
410 -0.2244 -0.2090
412.5 0.2288 -0.1842
415 0.1826 0.2911
417.5 -0.2701 0.2045
420 -0.1556 -0.2306
422.5 0.2795 -0.1266
425 0.1682 0.2991
427.5 -0.2720 0.1401
430 -0.0837 -0.2840
432.5 0.2958 -0.1051
435 0.1051 0.2900
437.5 -0.3044 0.0745
440 -0.0615 -0.2919
442.5 0.2821 -0.0365
445 0.0371 0.3159
447.5 -0.3064 0.0638
450 0.0107 -0.2711
452.5 0.3067 0.0472
455 0.0242 0.3197
457.5 -0.2754 -0.0005
460 0.0885 -0.2816
462.5 0.3049 0.0673
465 -0.0382 0.2834
467.5 -0.2741 -0.0663
470 0.0962 -0.2769
472.5 0.2617 0.1241
475 -0.1148 0.2792
477.5 -0.2703 -0.0716
480 0.1378 -0.2247
482.5 0.2485 0.2006
485 -0.1293 0.2709
487.5 -0.2124 -0.1139
490 0.2030 -0.1966
492.5 0.2311 0.2084
495 -0.1635 0.2124
497.5 -0.1841 -0.1818
500 0.2048 -0.1861
`}},jumper:{name:"Jumper, invented",elements:[{kind:"joint",family:"n"},{kind:"cable",cable:"rg_223",length_m:1.5},{kind:"joint",family:"n"}],load:{kind:"end",what:"matched"},file:{name:"jumper.s2p",text:`! Invented: a jumper, made by a script
# MHz S RI R 50
20 0.0030 -0.0127 0.5266 -0.8241 0.5280 -0.8276 0.0115 -0.0072
40 -0.0048 0.0004 -0.4068 -0.8904 -0.4085 -0.8943 -0.0033 -0.0034
60 0.0056 0.0100 -0.9649 -0.1414 -0.9611 -0.1401 0.0027 0.0082
80 0.0076 -0.0058 -0.6424 0.7349 -0.6436 0.7373 0.0168 -0.0055
100 -0.0031 0.0032 0.2674 0.9336 0.2696 0.9334 0.0037 -0.0004
120 -0.0033 0.0178 0.9264 0.2755 0.9258 0.2845 0.0039 0.0103
140 0.0078 0.0053 0.7348 -0.6273 0.7361 -0.6225 0.0142 0.0110
160 -0.0093 0.0021 -0.1260 -0.9514 -0.1272 -0.9531 0.0041 -0.0027
180 -0.0043 0.0200 -0.8708 -0.4112 -0.8729 -0.4104 0.0045 0.0137
200 0.0155 0.0165 -0.8138 0.5101 -0.8138 0.5105 0.0173 0.0196
220 -0.0010 -0.0013 -0.0100 0.9569 -0.0112 0.9542 0.0149 -0.0101
240 -0.0065 0.0180 0.8035 0.5247 0.7979 0.5305 -0.0023 0.0172
260 0.0084 0.0205 0.8727 -0.3869 0.8736 -0.3833 0.0153 0.0231
280 0.0061 -0.0035 0.1516 -0.9409 0.1492 -0.9369 0.0106 -0.0044
300 -0.0131 0.0121 -0.7133 -0.6336 -0.7070 -0.6333 -0.0045 0.0034
320 0.0176 0.0246 -0.9118 0.2524 -0.9119 0.2464 0.0096 0.0304
340 0.0161 0.0034 -0.2824 0.9007 -0.2827 0.9070 0.0177 0.0025
360 -0.0081 0.0144 0.6099 0.7267 0.6040 0.7306 0.0001 0.0105
380 0.0091 0.0296 0.9378 -0.1141 0.9391 -0.1100 0.0122 0.0354
400 0.0232 0.0028 0.4082 -0.8471 0.4113 -0.8521 0.0325 0.0118
420 -0.0061 0.0076 -0.4891 -0.8027 -0.4903 -0.8068 0.0009 0.0065
440 0.0035 0.0377 -0.9385 -0.0201 -0.9354 -0.0218 0.0052 0.0381
460 0.0267 0.0162 -0.5307 0.7804 -0.5288 0.7747 0.0371 0.0231
480 -0.0022 0.0061 0.3634 0.8665 0.3675 0.8606 0.0084 0.0027
500 -0.0027 0.0428 0.9248 0.1560 0.9211 0.1556 0.0005 0.0380
520 0.0308 0.0267 0.6325 -0.6889 0.6322 -0.6814 0.0408 0.0332
540 0.0063 0.0030 -0.2293 -0.9069 -0.2383 -0.9063 0.0108 0.0009
560 -0.0076 0.0338 -0.8891 -0.2966 -0.8828 -0.2924 -0.0010 0.0295
580 0.0360 0.0329 -0.7250 0.5825 -0.7226 0.5863 0.0368 0.0401
600 0.0137 0.0015 0.1014 0.9320 0.1001 0.9264 0.0316 -0.0007
620 -0.0059 0.0332 0.8281 0.4113 0.8382 0.4184 -0.0017 0.0258
640 0.0302 0.0475 0.7954 -0.4802 0.7942 -0.4709 0.0329 0.0449
660 0.0286 0.0051 0.0391 -0.9290 0.0369 -0.9248 0.0433 0.0022
680 -0.0115 0.0257 -0.7613 -0.5253 -0.7580 -0.5291 -0.0011 0.0194
700 0.0268 0.0547 -0.8568 0.3515 -0.8535 0.3523 0.0274 0.0559
720 0.0408 0.0044 -0.1722 0.9099 -0.1694 0.9073 0.0504 0.0154
740 -0.0030 0.0125 0.6749 0.6321 0.6729 0.6289 0.0026 0.0076
760 0.0190 0.0572 0.8959 -0.2231 0.8930 -0.2168 0.0155 0.0564
780 0.0511 0.0199 0.2988 -0.8674 0.3003 -0.8720 0.0590 0.0195
800 0.0098 0.0017 -0.5728 -0.7197 -0.5783 -0.7188 0.0123 0.0001
820 0.0142 0.0586 -0.9131 0.0901 -0.9154 0.0897 0.0127 0.0539
840 0.0554 0.0276 -0.4189 0.8177 -0.4196 0.8152 0.0607 0.0273
860 0.0188 -0.0014 0.4565 0.7981 0.4568 0.7949 0.0234 -0.0041
880 0.0060 0.0511 0.9165 0.0429 0.9096 0.0399 0.0116 0.0520
900 0.0608 0.0421 0.5260 -0.7419 0.5313 -0.7426 0.0698 0.0475
920 0.0318 -0.0084 -0.3397 -0.8498 -0.3382 -0.8492 0.0390 -0.0107
940 0.0008 0.0442 -0.8970 -0.1777 -0.8939 -0.1732 0.0010 0.0385
960 0.0516 0.0503 -0.6323 0.6585 -0.6280 0.6569 0.0625 0.0597
980 0.0439 -0.0062 0.2041 0.8867 0.2076 0.8904 0.0548 -0.0065
1000 0.0024 0.0289 0.8595 0.3022 0.8531 0.3051 0.0011 0.0272
`}}};var Fs="own-",kd=s=>[...Object.entries(Us).map(([e,{name:t}])=>[e,`Example: ${t}`]),...s.lines.map(({name:e},t)=>[`${Fs}${t}`,e||`Line ${t+1}`])],Sd=s=>`${Fs}${s}`,gt=s=>Object.hasOwn(Us,s);function Ni(s,e){if(gt(s)){let{name:n,elements:a,load:i,file:r}=Us[s];return{name:n,request:{elements:a,load:i},file:r}}let t=e.lines[Number(s.slice(Fs.length))];return s.startsWith(Fs)&&t?{...t,file:void 0}:Ni("line",e)}var Pi=class extends p({state:f(d),document:f(d),file:f(d),earlier:f(d),refusal:f(d)},v){static styles=[g,de,m`
      :host {
        display: grid; gap: 8px; padding: 12px; background: var(--card); border: 1px solid var(--line);
        border-radius: var(--round); align-content: start;
      }
      h2 { font-size: 1.05rem; }
      .of label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      p a { display: inline-grid; min-height: var(--target); align-items: center; }
      p { font-size: 0.9rem; }
    `];render(){let{state:e,file:t,earlier:n}=this,a=this._refusalOf("elements")??this._refusalOf("load");return o`<h2>The sweep</h2>
      <jw-sweep-file name="touchstone" label="Sweep from your analyser" held=${t?.name??""}
        error=${this._refusalOf("touchstone")?.message??""}></jw-sweep-file>
      <div class="of">
        <label for="of">Line it was taken on</label>
        <select id="of" @change=${i=>x(this,"jw-sweep-change",{changes:{of:i.target.value}})}>
          ${kd(this.document).map(([i,r])=>o`<option value=${i} .selected=${i===e.of}>${r}</option>`)}
        </select>
      </div>
      ${gt(e.of)?o`<p class="quiet">Line and measurement are invented, to show what comes out.</p>`:o`<p><a href="#view=line">Change the line in the Line view</a></p>`}
      ${a?o`<p class="error" role="alert">${a.message}</p>`:u}
      <div class="fields" @jw-change=${this._changed}>${this._field("end")}${this._field("length_tolerance")}</div>
      <details ?open=${!!n||J(this.refusal)==="earlier"}>
        <summary>Earlier sweep and window <small>${n?.name??"none"}</small></summary>
        <jw-sweep-file name="earlier" label="An earlier sweep to compare with" held=${n?.name??""}
          error=${this._refusalOf("earlier")?.message??""}></jw-sweep-file>
        ${n?o`<button @click=${()=>x(this,"jw-sweep-forget")}>No earlier sweep</button>`:u}
        <div class="fields" @jw-change=${this._changed}>${this._field("window_shape")}</div>
      </details>`}_refusalOf(e){return J(this.refusal)===e?this.refusal:void 0}_field(e){let t=this._refusalOf(e);return q(this.vocabulary,`sweep.${e}`,this.state[e],t&&le(t,this.vocabulary.labelOf(`sweep.${e}`)))}_changed(e){e.stopPropagation(),e.detail.live||x(this,"jw-sweep-change",{changes:W(e)})}};customElements.define("jw-sweep-form",Pi);var Ds=s=>s.map(e=>e/1e6),Ed=340,K=(s,e,t,n,a={})=>({type:"scatter",mode:"lines",x:s,y:e,name:t,line:n,connectgaps:!1,hovertemplate:`%{y:.3f} at %{x:.4g}<extra>${t}</extra>`,...a}),bt=s=>({...s,showlegend:!0,legend:{orientation:"h",y:1.02,yanchor:"bottom",x:0},margin:{...s.margin,t:34}});function jd(s,e=U){let{profile:t,joints:n}=s,{distance_m:a}=t,i=s.transform==="low-pass",r=bt(te({x:"from the analyser, m",y:"reflection",colours:e,height:Ed})),l=c=>t.expected.map((h,b)=>h===null?null:h+c*t.threshold[b]);return{data:[K(a,l(-1),"below",{width:0},{showlegend:!1,hoverinfo:"skip"}),K(a,l(1),"threshold",{width:0},{fill:"tonexty",fillcolor:Ht(e.band),hoverinfo:"skip"}),K(a,t.expected,"expected",{color:e.soft,width:1.5,dash:"dot"}),...t.earlier.length>0?[K(a,t.earlier,"earlier",{color:e.soft,width:1.5,dash:"dash"})]:[],K(a,t.measured,"measured",{color:e.band,width:2.5})],layout:{...r,yaxis:{...r.yaxis,range:ph(s),tickformat:i?"+.3~f":".3~f"},shapes:n.map(c=>gh(c,s,e)),annotations:n.map(c=>bh(c,s,e))},config:ee}}function ph({profile:s,joints:e}){let t=Math.max(.02,...e.flatMap((a,i)=>i===e.length-1?[a.excess,a.threshold]:[a.measured,a.expected,a.threshold]));return[s.measured.some(a=>a<0)?-1.6*t:0,1.6*t]}var Ad=(s,e)=>e.suspect===s.element||e.apart.includes(s.element),gh=(s,e,t)=>({type:"line",yref:"paper",x0:s.distance_m,x1:s.distance_m,y0:0,y1:1,line:Ad(s,e)?{color:t.accent,width:2.5}:{color:t.soft,width:1,dash:"dot"}}),bh=(s,e,t)=>({x:s.distance_m,yref:"paper",y:1,yanchor:"top",xanchor:"left",showarrow:!1,textangle:90,text:`${s.element+1} · ${s.name}`,font:{size:11,color:Ad(s,e)?t.accent:t.soft}});function Od({curves:s},e=U){let t=Ds(s.frequency_hz),n=i=>i.map(r=>r===null?null:-r),a=bt(te({x:"frequency, MHz",y:"return loss, dB",colours:e}));return{data:[K(t,n(s.expected_db),"expected",{color:e.soft,width:1.5,dash:"dot"}),K(t,n(s.measured_db),"measured",{color:e.band,width:1.5}),K(t,n(s.fitted_db),"as fitted",{color:e.accent,width:1.5,dash:"dash"})],layout:{...a,yaxis:{...a.yaxis,autorange:"reversed"}},config:ee}}function _h(s,e){if(s===null||e===null)return[null,null];let t=(1-s)**2+e**2;return[(1-s**2-e**2)/t,2*e/t]}function Td(s,e,t=U){let n=Ds(e).map(a=>`${a.toPrecision(4)} MHz`);return{data:s.map(({name:a,real:i,imaginary:r,colour:l,dash:c})=>{let h=i.map((b,_)=>_h(b,r[_]));return{type:"scattersmith",mode:"lines",name:a,real:h.map(([b])=>b),imag:h.map(([,b])=>b),line:{color:t[l],width:1.5,dash:c},text:n,hovertemplate:`%{text}: %{real:.3g} %{imag:+.3g}j<extra>${a}</extra>`}}),layout:{...bt(te({x:"",y:"",colours:t,height:Ed})),margin:{l:24,r:24,t:34,b:20},smith:{bgcolor:"rgba(0,0,0,0)",realaxis:{gridcolor:t.line,linecolor:t.soft,tickfont:{size:10},tickvals:[.2,.5,1,2,5]},imaginaryaxis:{gridcolor:t.line,linecolor:t.soft,tickfont:{size:10},tickvals:[-5,-2,-1,-.5,-.2,0,.2,.5,1,2,5]}}},config:ee}}var Cd=({curves:s},e=U)=>Td([{name:"measured",real:s.measured_real,imaginary:s.measured_imaginary,colour:"band",dash:"solid"},{name:"as fitted",real:s.fitted_real,imaginary:s.fitted_imaginary,colour:"accent",dash:"dash"}],s.frequency_hz,e),zd=(s,e=U)=>Td([{name:"into port 1",real:s.measured_real,imaginary:s.measured_imaginary,colour:"band",dash:"solid"}],s.frequency_hz,e);function Rd(s,e=U){let t=Ds(s.frequency_hz),n=bt(te({x:"frequency, MHz",y:"loss, dB",colours:e}));return{data:[K(t,s.expected_loss_db,"expected",{color:e.soft,width:1.5,dash:"dot"}),K(t,s.limit_loss_db,"limit",{color:e.ink,width:1.5}),...s.earlier_loss_db.length>0?[K(t,s.earlier_loss_db,"earlier",{color:e.soft,width:1.5,dash:"dash"})]:[],K(t,s.loss_db,"measured",{color:e.band,width:2.5})],layout:n,config:ee}}function Md(s,e=U){let t=Ds(s.frequency_hz),n=bt(te({x:"frequency, MHz",y:"return loss, dB",colours:e}));return{data:[K(t,s.limit_return_loss_db,"limit",{color:e.ink,width:1.5}),K(t,s.return_loss_db,"port 1",{color:e.band,width:2.5}),K(t,s.other_return_loss_db,"port 2",{color:e.accent,width:1.5,dash:"dash"})],layout:{...n,yaxis:{...n.yaxis,autorange:"reversed"}},config:ee}}function Ld({title:s,series:e},t=U){let n=bt(te({x:"",y:s,colours:t})),a=[t.band,t.accent,t.soft,t.ink];return{data:e.map(({name:i,dates:r,values:l},c)=>({type:"scatter",mode:"lines+markers",x:r,y:l,name:i,line:{color:a[c%a.length],width:2,dash:c<a.length?"solid":"dot"},marker:{size:8,symbol:c},hovertemplate:`%{y:.3g} on %{x}<extra>${i}</extra>`})),layout:{...n,xaxis:{...n.xaxis,type:"date",tickformat:"%Y-%m-%d",nticks:5},yaxis:{...n.yaxis,rangemode:"tozero"}},config:ee}}var Nd=()=>new Date().toISOString().slice(0,10),qi=class extends p({entries:f(d),line:{type:String},keepable:{type:Boolean},load:f(d),_date:w(d)}){static styles=[g,j,tt,m`
      .bar { display: flex; flex-wrap: wrap; gap: 6px 10px; align-items: end; margin-bottom: 8px; }
      .bar label:not(.pick) { font-size: 0.8rem; font-weight: 600; }
      .bar input[type='date'] { width: auto; }
      td button { font-size: 0.85rem; padding: 0 10px; }
      .scroll { overflow-x: auto; }
      @media print { .bar, td:last-child, th:last-child { display: none; } }
    `];constructor(){super(),this._date=Nd()}willUpdate(e){if(!e.has("entries")&&!e.has("line"))return;let t=bd(this.entries,this.line);this._figure=t&&(n=>Ld(t,n)),this._title=t?.title}render(){let{entries:e}=this,t=a=>this._date=a.target.value||Nd(),n=()=>Xe("jointwise-sweeps.json",wd(e));return o`<section class="panel" id="kept">
      <h2>Kept sweeps <small>in this browser only</small></h2>
      <div class="bar">
        <label>Measured on <input id="day" type="date" .value=${this._date} @change=${t}></label>
        <button id="keep" ?disabled=${!this.keepable}
          @click=${()=>x(this,"jw-sweep-keep",{date:this._date})}>Keep this sweep</button>
        <button id="export" ?disabled=${e.length===0} @click=${n}>Export</button>
        <label class="pick">Import<input id="import" type="file" accept=".json" @change=${this._import}></label>
      </div>
      ${e.length===0?o`<p class="quiet">None yet. Keep one after each inspection, and what changes will show.</p>`:this._table()}
      ${this._figure?o`<jw-chart id="history" .figure=${this._figure} .load=${this.load}
              label="${this._title} of ${this.line} over the days of the kept sweeps"></jw-chart>`:u}
    </section>`}_table(){return o`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Day</th><th scope="col">Line</th><th scope="col">What it told</th><th scope="col">Do</th>
        </tr>
      </thead>
      <tbody>
        ${this.entries.toReversed().map(e=>this._row(e))}
      </tbody>
    </table></div>`}_row(e){let{date:t,line:n,verdict:a}=e;return o`<tr>
      <td>${t}</td><th scope="row">${n}</th><td>${a}</td>
      <td>
        <button aria-label="Compare with the sweep of ${n} of ${t}"
          @click=${()=>x(this,"jw-sweep-compare",{entry:e})}>Compare</button>
        <button aria-label="Remove the sweep of ${n} of ${t}"
          @click=${()=>x(this,"jw-sweep-drop",{entry:e})}>Remove</button>
      </td>
    </tr>`}async _import({target:e}){let[t]=e.files;if(!t)return;let n=await t.text();e.value="";try{x(this,"jw-sweep-import",{entries:xd(n)})}catch(a){if(!(a instanceof RangeError))throw a;x(this,"jw-notice",{text:`${t.name} was not taken. ${a.message}`})}}};customElements.define("jw-sweep-history",qi);var Pd={sound:{mark:"✓",words:"Nothing found"},suspect:{mark:"!",words:"Bad joint"},unclear:{mark:"?",words:"Not decided"},"no fit":{mark:"≠",words:"Another line"}},qd=s=>s.passed?{mark:"✓",words:"Passed"}:{mark:"!",words:"Failed"},Wd=({name:s,unit:e,value:t,low:n,high:a})=>`${s} ${E(t,e,3)} (${E(n,e,3)} to ${E(a,e,3)})`,_t=s=>s===null?"–":y(s,2);function Id(s,e){return e.suspect===s.element?"bad":e.apart.includes(s.element)?"one of these":s.shadowed?"behind the fault":s.seen?"echo above threshold":s.least_resistance_ohm===null?"not to be judged with this end":"no sign of a fault"}var Hd=({least_resistance_ohm:s})=>s===null?"–":E(s,"Ω",2),Xt=s=>`${y(s*100,2)} %`;var Wi=class extends p({check:f(d),load:f(d)}){static styles=[g,j,m`
      :host { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr)); gap: 12px; }
      .wide { grid-column: 1 / -1; }
      .scroll { overflow-x: auto; }
      tr[data-accused] { background: var(--alarm-wash); font-weight: 650; }
      td.words { min-width: 9em; }
      summary { cursor: pointer; min-height: var(--target); align-content: center; }
      p + .scroll { margin-top: 6px; }
      @media print { :host { display: block; } .panel { margin-bottom: 2mm; } .scroll { overflow: visible; } }
    `];willUpdate(e){if(!e.has("check"))return;let{check:t}=this;this._distance=n=>jd(t,n),this._returned=n=>Od(t,n),this._smith=n=>Cd(t,n)}updated(){ct(this.renderRoot.querySelectorAll(".scroll"))}render(){let{check:e}=this;return o`<section class="panel wide" id="distance">
        <h2>Reflection along the line</h2>
        <jw-chart style="--chart:340px" .figure=${this._distance} .load=${this.load}
          label=${"Reflection against distance, measured and expected, a mark at each joint; the same numbers stand in the table of joints"}></jw-chart>
        <p class="quiet">
          Shaded: what a good line may show. Reaches ${E(e.range_m,"m",3)},
          keeps echoes ${E(e.resolution_m,"m",2)} apart
          (${e.transform}, side lobes ${y(e.side_lobe_db,3)} dB down); velocity and loss of the cables are
          taken out. The echo of the line’s end may run out of the picture.
        </p>
      </section>
      ${this._joints()} ${this._fit()}
      <section class="panel" id="returned"><h2>Return loss at the analyser</h2>
        <jw-chart .figure=${this._returned} .load=${this.load} label=${"Return loss against frequency: measured, expected of a sound line, and as fitted"}></jw-chart></section>
      <section class="panel" id="smith"><h2>Smith chart at the analyser</h2>
        <jw-chart style="--chart:340px" .figure=${this._smith} .load=${this.load}
          label="Measured and fitted reflection on the Smith chart"></jw-chart></section>`}_joints(){let{check:e}=this,t=e.joints.some(({change:n})=>n!==null);return o`<section class="panel wide" id="joints">
      <h2>Joints</h2>
      <div class="scroll"><table class="plain">
        <thead>
          <tr>
            <th scope="col">Joint</th><th scope="col" class="number">At</th><th scope="col">Finding</th>
            <th scope="col" class="number">Measured</th><th scope="col" class="number">Expected</th>
            <th scope="col" class="number">Excess</th><th scope="col" class="number">Threshold</th>
            ${t?o`<th scope="col" class="number">Change</th>`:u}
            <th scope="col" class="number">Would show</th>
          </tr>
        </thead>
        <tbody>
          ${e.joints.map(n=>this._joint(n,t))}
        </tbody>
      </table></div>
      <p class="quiet">
        Reflections are shares of the wave sent. “Would show” is the smallest added resistance this sweep would show
        there.
      </p>
    </section>`}_joint(e,t){let{check:n}=this,a=n.suspect===e.element||n.apart.includes(e.element),i=()=>`; ${E(e.nearest_m,"m",2)} to the next, too near for an echo of its own`;return o`<tr data-element=${e.element} ?data-accused=${a}>
      <th scope="row">${e.element+1} · ${e.name}</th>
      <td class="number">${E(e.distance_m,"m",3)}</td>
      <td class="words">${Id(e,n)}${e.separate?"":i()}</td>
      <td class="number">${_t(e.measured)}</td><td class="number">${_t(e.expected)}</td>
      <td class="number">${_t(e.excess)}</td><td class="number">${_t(e.threshold)}</td>
      ${t?o`<td class="number">${_t(e.change)}</td>`:u}
      <td class="number">${Hd(e)}</td>
    </tr>`}_fit(){let{candidates:e,deviations:t,noise:n}=this.check;return o`<section class="panel wide" id="fit">
      <h2>What explains the sweep</h2>
      ${e.length===0?o`<p>
              The line as it should be leaves ${Xt(n)} of the reflection unexplained, and no single fault
              explains enough of that to count.
            </p>`:wh(e)}
      <details class="more"><summary>Good parts as fitted</summary><div class="scroll"><table class="plain">
        <thead>
          <tr>
            <th scope="col">Cable</th><th scope="col">What</th>
            <th scope="col" class="number">Off by</th><th scope="col" class="number">±</th>
          </tr>
        </thead>
        <tbody>
          ${t.map(yh)}
        </tbody>
      </table></div></details>
    </section>`}},wh=s=>o`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Joint</th><th scope="col">Fault</th><th scope="col">Size, with its bounds</th>
          <th scope="col" class="number">Evidence</th><th scope="col" class="number">Left over</th>
        </tr>
      </thead>
      <tbody>
        ${s.map(xh)}
      </tbody>
    </table></div>
    <p class="quiet">
      Bounds are one standard deviation. Evidence is the fall of the Bayesian information criterion against a sound
      line; ten more are odds of 150 to 1.
    </p>`,xh=({element:s,joint:e,name:t,sizes:n,evidence:a,misfit:i})=>o`<tr>
    <th scope="row">${s+1} · ${e}</th><td class="words">${t}</td>
    <td class="words">${n.map(r=>o`<div>${Wd(r)}</div>`)}</td>
    <td class="number">${y(a,3)}</td><td class="number">${Xt(i)}</td>
  </tr>`,yh=({element:s,part:e,what:t,share:n,uncertainty:a})=>o`<tr>
    <th scope="row">${s+1} · ${e}</th><td>${t}</td>
    <td class="number">${Xt(n)}</td><td class="number">${Xt(a)}</td>
  </tr>`;customElements.define("jw-sweep-line",Wi);var Ii=s=>s===null?"–":`${s.toFixed(2).replace("-","−")} dB`,Hi=class extends p({part:f(d),load:f(d)}){static styles=[g,j,m`
      :host { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr)); gap: 12px; }
      .wide { grid-column: 1 / -1; }
      @media print { :host { display: block; } .panel { margin-bottom: 2mm; } }
    `];willUpdate(e){if(!e.has("part"))return;let{part:t}=this;this._loss=n=>Rd(t,n),this._returned=n=>Md(t,n),this._smith=n=>zd(t,n)}render(){let{part:e}=this;return o`<section class="panel wide" id="part"><h2>Against the limits of its parts</h2>
        <table class="plain"><tbody>
          ${this._row("Loss",e.loss_passed,e.worst_loss_margin_db,e.worst_loss_at_hz)}
          ${this._row("Match",e.match_passed,e.worst_match_margin_db,e.worst_match_at_hz)}
          <tr>
            <th scope="row">Resistance in series</th>
            <td colspan="2">
              ${E(e.resistance_ohm,"Ω",3)} ± ${E(e.resistance_uncertainty_ohm,"Ω",2)},
              from the steady part of the excess loss
            </td>
          </tr>
          <tr>
            <th scope="row">Excess like skin effect</th>
            <td colspan="2">${Ii(e.skin_excess_db_at_top)} at the upper edge</td>
          </tr>
          ${e.trend?vh(e.trend):u}
        </tbody></table>
      </section>
      <section class="panel" id="loss"><h2>Loss</h2>
        <jw-chart .figure=${this._loss} .load=${this.load} label=${"Loss against frequency: measured, expected, and what its parts may lose"}></jw-chart></section>
      <section class="panel" id="returned"><h2>Return loss</h2>
        <jw-chart .figure=${this._returned} .load=${this.load} label=${"Return loss into both ports against frequency, and the least its parts may have"}></jw-chart></section>
      <section class="panel" id="smith"><h2>Smith chart into port 1</h2>
        <jw-chart style="--chart:340px" .figure=${this._smith} .load=${this.load}
          label="Reflection into port 1 on the Smith chart"></jw-chart></section>`}_row(e,t,n,a){return o`<tr>
      <th scope="row">${e}</th><td>${t?"✓ within the limit":"! over the limit"}</td>
      <td class="number">margin ${Ii(n)} at ${a===null?"–":O(a)}</td>
    </tr>`}},vh=({sentence:s,largest_loss_change_db:e,at_hz:t})=>o`<tr>
    <th scope="row">Since the earlier sweep</th>
    <td colspan="2">
      ${s} Largest change of loss ${Ii(e)} at ${O(t)}.
    </td>
  </tr>`;customElements.define("jw-sweep-part",Hi);var Bi=class extends p({result:f(d),of:{type:String},outdated:{type:String}}){static styles=[g,j,m`
      .finding { display: flex; flex-wrap: wrap; gap: 6px 10px; align-items: baseline; }
      .mark {
        flex: none; min-width: 1.6em; padding: 1px 10px; border-radius: 99px; background: var(--accent);
        color: var(--accent-ink); font-weight: 700; text-align: center;
      }
      #verdict { flex: 1 1 280px; font-size: 1.12rem; font-weight: 650; line-height: 1.35; overflow-wrap: anywhere; }
      ul { padding-left: 1.2em; margin-top: 6px; font-size: 0.92rem; }
      .outdated {
        padding: 8px 12px; margin-top: 8px; background: var(--alarm-wash); border: 1px solid var(--alarm);
        border-radius: var(--round);
      }
      .quiet { margin-top: 6px; }
    `];render(){let{result:e}=this,{advice:t}=e,{mark:n,words:a}=e.line?Pd[e.line.finding]:qd(e.part);return o`<section class="panel">
      <div class="finding" role="status">
        <span class="mark">${n} ${a}</span><p id="verdict">${e.verdict}</p>
      </div>
      ${t.length>0?o`<ul id="advice">${t.map(i=>o`<li>${i}</li>`)}</ul>`:u}
      <p class="quiet">
        ${this.of}; ${e.points} points from ${O(e.low_hz)} to ${O(e.high_hz)},
        reference ${y(e.reference_ohm)} Ω. ${e.notes.join(" ")}
      </p>
      ${this.outdated?o`<p class="outdated" role="alert">${this.outdated}</p>`:u}
    </section>`}};customElements.define("jw-sweep-verdict",Bi);var kh={key:"jointwise-sweeps",blocked:"This browser keeps nothing for the page: your sweeps end when it is closed. Export them to keep them.",full:"This browser has no room for more sweeps: the last one is not kept. Export the list and remove old ones.",spoilt:"The sweeps kept in this browser could not be read and were set aside. Save them as a file to look for what is left."},Ui=new fe(kh,Mi);var Zt=class s extends p({loadCharts:f(d),_state:w(d),_document:w(d),_file:w(d),_earlier:w(d),_entries:w(d)},Y){static view="sweep";static styles=[g,ce,j,m`
      summary { cursor: pointer; min-height: var(--target); align-content: center; font-weight: 600; }
      .prompt { display: grid; place-content: center; min-height: 30vh; }
    `];constructor(){super(),this._document=Ue,this._entries=[],this._sweep=this._enquiry("sweep"),this._catalogue=this._enquiry("catalogue")}connectedCallback(){super.connectedCallback(),this._recall()}_begin(){this._state=this._first}get _first(){return this.vocabulary.first.sweep}render(){let{error:e,result:t}=this._sweep,n=!!t&&!e&&this._sweep.answered===this._request;return o`${this._progress(this._sweep)}
      <main @jw-sweep-change=${({detail:a})=>this._change(a.changes)}
        @jw-sweep-file=${({detail:a})=>this._take(a)} @jw-sweep-forget=${()=>this._earlier=void 0}
        @jw-sweep-keep=${({detail:a})=>this._keep(a.date)} @jw-sweep-drop=${({detail:a})=>this._drop(a.entry)}
        @jw-sweep-import=${({detail:a})=>this._remember(a.entries.reduce(Ri,this._entries))}
        @jw-sweep-compare=${({detail:a})=>this._compare(a.entry)}>
        <div class="bar" role="group" aria-label="Take along">
          <button @click=${()=>window.print()}>Print</button>
        </div>
        <jw-sweep-form class="noprint" .state=${this._state} .document=${this._document} .file=${this._atHand}
          .earlier=${this._earlier} .refusal=${e}></jw-sweep-form>
        <div class="answer">
          ${this._answer(t,e)}
          <jw-sweep-history .entries=${this._entries} line=${this._line.name} ?keepable=${n}
            .load=${this.loadCharts}></jw-sweep-history>
          ${t?o`<jw-cautions .cautions=${t.cautions}></jw-cautions>`:u}
        </div>
      </main>`}_answer(e,t){if(!this._atHand)return o`<section class="panel prompt"><h2>Drop the sweep of ${this._line.name} on the left field</h2>
        <p>A one-port file of the whole line, or a two-port file of what the line consists of.</p></section>`;if(!e)return o`<p class="waiting quiet">${t?t.message:"The core is at work…"}</p>`;let n=t?`Out of date, this is the answer to the sweep before. ${t.message}`:"";return o`<jw-sweep-verdict .result=${e} of="${this._line.name}, ${this._atHand.name}"
        outdated=${n}></jw-sweep-verdict>
      ${e.line?o`<jw-sweep-line .check=${e.line} .load=${this.loadCharts}></jw-sweep-line>`:u}
      ${e.part?o`<jw-sweep-part .part=${e.part} .load=${this.loadCharts}></jw-sweep-part>`:u}
      <details class="panel more noprint" id="how">
        <summary>How this was worked out</summary>
        <jw-steps .steps=${e.steps} .catalogue=${this._catalogue.result}></jw-steps>
      </details>`}get _line(){return Ni(this._state.of,this._document)}get _atHand(){return this._file??this._line.file}get _request(){let e=[this._state,this._document,this._atHand,this._earlier],t=this._parts;return(!t||e.some((n,a)=>n!==t[a]))&&(this._parts=e,this._made=$d(this._state,this._line,this._atHand,this._earlier)),this._made}_ask(){!this._atHand||this._request===this._asked||(this._asked=this._request,this._sweep.askNext(this._request),["initial","error"].includes(this._catalogue.status)&&this._catalogue.ask({}))}_change(e){"of"in e&&Object.assign(this,{_file:void 0,_earlier:void 0});let t=gt(e.of)?{end:this._first.end}:{};this._state={...this._state,...e,...t},this._address()}_take({name:e,file:t}){if(e==="earlier"){this._earlier=t;return}gt(this._state.of)&&this._change({of:Sd(this._document.current)}),this._file=t}_compare({name:e,date:t,text:n}){this._earlier={name:`${e}, ${t}`,text:n}}_drop(e){this._remember(this._entries.filter(t=>t!==e))}_keep(e){let t=gd({date:e,line:this._line.name,file:this._atHand,result:this._sweep.result});this._remember(Ri(this._entries,t))}_remember(e){this._entries=e;let t=Ui.remember(()=>localStorage,e);this._notice(t&&{text:t})}_recall(){let{document:e,problem:t,spoilt:n}=Ui.recalled(()=>localStorage);this._entries=e??[],n&&this._notice({text:t,action:{words:"Save them",run:()=>M("jointwise-sweeps-unread.txt","text/plain",n)}})}_address(){let e=Ie(s.view,this._state,this._first);e!==location.hash.slice(1)&&history.pushState(null,"",`#${e}`)}_restore(e){let{fields:t}=this.vocabulary,{state:n,unknown:a}=Ze(e,t.sweep,this._first);this._document=at.recalled(()=>localStorage,t).document??Ue,this._state=n,this._notice(je(a))}};customElements.define("jw-sweep-view",Zt);var Bd=()=>({"sweep.end":{label:"The line ended in",options:{short:"a short",open:"nothing (open)",matched:"a matched load",antenna:"the antenna of the line"}},"sweep.length_tolerance":{label:"Lengths are right within",factor:.01,unit:"%"},"sweep.window_shape":{label:"Window shape",step:.5}});var Ud={id:Zt.view,label:"Sweep",fields:ud,words:Bd,upright:!0,element:({transport:s,stage:e,loadCharts:t})=>o`<jw-sweep-view class="view" .transport=${s} .stage=${e}
      .loadCharts=${t}></jw-sweep-view>`};var Jt=[sd,co,v0,Sl,Uo,Ud],wt=fd;var Fi=matchMedia("(prefers-color-scheme: dark)"),Fd="jointwise-theme";function Sh(){try{return localStorage.getItem(Fd)??void 0}catch{return}}var Di=class extends p({view:{type:String},packs:{type:Number},_theme:w(d)}){static styles=[g,m`
      header {
        display: flex; flex-wrap: wrap; gap: 4px 14px; align-items: center; padding: 8px 16px; background: var(--card);
      }
      svg { width: 34px; height: 34px; flex: none; }
      h1 { margin: 0; font-size: 1.35rem; letter-spacing: -0.02em; line-height: 1; }
      p { flex: 1 1 16rem; color: var(--soft); font-size: 0.92rem; line-height: 1.3; }
      nav, .switches { display: flex; gap: 6px; }
      nav button { margin-left: -7px; border-radius: 0; font-weight: 600; }
      nav button:first-child { margin-left: 0; border-radius: var(--round) 0 0 var(--round); }
      nav button:last-child { border-radius: 0 var(--round) var(--round) 0; }
      [aria-current] { background: var(--accent); border-color: var(--accent); color: var(--accent-ink); }
      button { font-size: 0.85rem; padding: 0 12px; }
      @media (max-width: 960px) {
        .switches { margin-left: auto; }
      }
      @media (max-width: 480px) {
        header { gap: 4px 8px; padding: 6px 10px; }
        .switches { gap: 4px; }
        .switches button { padding: 0 8px; }
        nav { order: 3; }
        nav button { padding: 0 7px; white-space: nowrap; }
        p { order: 4; flex-basis: 100%; font-size: 0.8rem; }
      }
      @media print {
        header { padding: 0 0 2mm; }
        nav, .switches { display: none; }
        h1 { font-size: 13pt; }
        p { font-size: 8pt; }
      }
    `];constructor(){super(),this._turned=()=>this.requestUpdate(),this._theme=Sh()}connectedCallback(){super.connectedCallback(),Fi.addEventListener("change",this._turned)}disconnectedCallback(){super.disconnectedCallback(),Fi.removeEventListener("change",this._turned)}willUpdate(){this._theme&&(document.documentElement.dataset.theme=this._theme)}render(){let e=this.packs>0?o` <b>${this.packs}</b><span class="unseen"> in force</span>`:u;return o`<header>
      <svg viewBox="0 0 32 32" aria-hidden="true">
        <circle cx="16" cy="16" r="15" fill="#1f5690"></circle>
        <circle cx="16" cy="16" r="11" fill="#f8e8c8"></circle>
        <circle cx="16" cy="16" r="4.8" fill="#bf8031"></circle>
      </svg>
      <h1>Jointwise</h1>
      <nav aria-label="Views">
        ${Jt.map(({id:t,label:n})=>o`<button data-view=${t} aria-current=${t===this.view?"page":u}
              @click=${()=>x(this,"jw-view",{view:t})}>${n}</button>`)}
      </nav>
      <p>How much power a coaxial joint stands, band by band, with the derivation of every number.</p>
      <div class="switches">
        <button id="packs" aria-current=${this.view===wt.id?"page":u}
          @click=${()=>x(this,"jw-view",{view:wt.id})}>Packs${e}</button>
        <button id="methods" @click=${()=>x(this,"jw-methods")}>Method</button>
        <button id="theme" aria-pressed=${this._dark} @click=${this._turn}>Dark</button>
      </div>
    </header>`}get _dark(){return this._theme?this._theme==="dark":Fi.matches}_turn(){this._theme=this._dark?"light":"dark";try{localStorage.setItem(Fd,this._theme)}catch{let e="This browser keeps nothing for the page, so the choice of light or dark ends when it is closed.";this.dispatchEvent(new CustomEvent("jw-notice",{detail:{text:e},bubbles:!0,composed:!0}))}}};customElements.define("jw-masthead",Di);var Gi=class extends p({text:{type:String},link:{type:String},action:f(d)}){static styles=[g,m`
      :host { position: fixed; inset: auto 12px 12px; z-index: 30; max-width: 640px; margin: 0 auto; }
      div {
        box-shadow: 0 6px 30px #0004;
        display: flex; flex-wrap: wrap; gap: 8px 12px; align-items: center; padding: 4px 4px 4px 14px;
        background: var(--accent-wash); border: 1px solid var(--accent); border-radius: var(--round);
      }
      p { flex: 1 1 14rem; }
      input { flex: 2 1 14rem; }
      @media print { :host { display: none; } }
    `];constructor(){super(),this.text="",this.link=""}render(){return this.text?o`<div role="status">
      <p>${this.text}</p>
      ${this.link?o`<input readonly aria-label="Link to this view" .value=${this.link} @focus=${e=>e.target.select()}>`:u}
      ${this.action?o`<button id="notice-action" @click=${this.action.run}>${this.action.words}</button>`:u}
      <button @click=${this._dismiss}>Close</button>
    </div>`:o`<span role="status"></span>`}_dismiss(){this.dispatchEvent(new CustomEvent("jw-dismiss",{bubbles:!0,composed:!0}))}};customElements.define("jw-notice",Gi);var Dd=m`
  main { display: grid; grid-template-columns: minmax(0, 1fr); gap: 10px; padding: 10px 8px 40px; }
  jw-scenario {
    padding: 10px 12px; overflow: hidden; background: var(--card);
    border: 1px solid var(--line); border-radius: var(--round);
  }
  .bar { display: flex; flex-wrap: wrap; gap: 8px 16px; align-items: end; justify-content: space-between; }
  .tools jw-presets { flex: 1 1 540px; }
  .below { display: grid; gap: 16px; }
  .onpaper { display: none; }
  /* what stands above the tables speaks to a reader without scripts */
  .tables ::slotted(:is(h1, p)) { display: none; }
  .trouble {
    display: flex; gap: 12px; align-items: center; padding: 4px 4px 4px 14px;
    background: var(--alarm-wash); border: 1px solid var(--alarm); border-radius: var(--round);
  }
  jw-progress { position: sticky; top: 0; z-index: 5; }
  @media (max-width: 720px) {
    jw-scenario { padding: 0; }
    .tools { display: contents; }
    jw-exports { order: 1; }
  }
  @media (min-width: 900px) { main { padding: 14px 16px 48px; gap: 12px; } }
  .view { display: block; }
  @media (min-width: 1280px) { .page:has(> [beside]) { padding-right: var(--sheet); } }
  @media print {
    .page:has(> [beside]) { padding: 0; }
    .page[data-upright] { page: upright; }
    .page[data-upright] > jw-masthead { display: none; }
    main { padding: 0; gap: 2mm; }
    jw-presets, jw-scenario, .bar, .trouble { display: none; }
    .onpaper { display: block; }
    h2.onpaper { font-size: 9pt; }
    .below { gap: 2mm; break-inside: avoid; }
  }
`;var Vs=[...Jt,wt],[Gd]=Jt,Vi=Vs.map(({id:s})=>s),Gs={text:"",link:"",action:void 0},Ki=class extends p({transport:f(d),shelf:f(d),stage:{type:String},file:{type:String},loadCharts:f(d),loadEmbed:f(d),_view:w(d),_notice:w(d)}){static styles=[g,Dd];constructor(){super(),this.stage="",this.file="",this._notice=Gs,this.version=0,this._vocabulary=new Ge(this,{context:At}),this._view=Je(location.hash.slice(1),Vi),this._fragments=Object.fromEntries(Vs.map(e=>[e.id,e===Gd?"":`view=${e.id}`])),this._travelled=()=>this._view=Je(location.hash.slice(1),Vi),this._left=({oldURL:e})=>this._keep(new URL(e).hash.slice(1))}connectedCallback(){super.connectedCallback(),window.addEventListener("popstate",this._travelled),window.addEventListener("hashchange",this._left)}disconnectedCallback(){super.disconnectedCallback(),window.removeEventListener("popstate",this._travelled),window.removeEventListener("hashchange",this._left)}willUpdate(e){!e.has("shelf")||!this.shelf||(this._layPacks(),this.shelf.listen(()=>{this.version++,this._layPacks(),this.requestUpdate()}))}_layPacks(){this._vocabulary.setValue(new fs(D,Vs,this.shelf.inForce)),this._tellPacks()}_tellPacks(){let{problem:e,spoilt:t}=this.shelf,a=t?{words:"Save them",run:()=>M("jointwise-packs-unread.txt","text/plain",t)}:void 0;e&&(this._notice={...Gs,text:e,action:a})}render(){let{_notice:e}=this,t=Vs.find(({id:n})=>n===this._view);return o`<div class="page" data-view=${t.id} ?data-upright=${t.upright}
      @jw-notice=${({detail:n})=>this._notice={...Gs,...n}}
      @jw-dismiss=${()=>this._notice=Gs}>
      <jw-masthead .view=${t.id} packs=${this.shelf?.inForce.length??0} @jw-view=${this._turned}
        @jw-methods=${this._methods}></jw-masthead>
      ${pn(t===wt?t.element(this):o`${Ar(this.version,pn(t.element(this)))}`)}
      <jw-notice .text=${e.text} .link=${e.link} .action=${e.action}></jw-notice>
    </div>`}_turned({detail:{view:e}}){if(e===this._view)return;this._keep(location.hash.slice(1));let t=this._fragments[e];history.pushState(null,"",t?`#${t}`:location.pathname+location.search),this._view=e}_keep(e){this._fragments[Je(e,Vi)]=e}_methods(){this._view===Gd.id?H(this.renderRoot,".view").openMethods():location.hash="view=methods"}offerUpdate(e){this._notice={text:"A newer Jointwise is ready.",link:"",action:{words:"Load it",run:e}}}};customElements.define("jw-app",Ki);function Vd(s){let e,t=()=>new Promise((n,a)=>{let i=document.createElement("script");i.src=s,i.onload=()=>n(window.Plotly),i.onerror=()=>{e=void 0,i.remove(),a(new Error("The chart library could not be loaded."))},document.head.append(i)});return()=>e??=t()}function Kd(s){let e,t=async()=>{try{return await import(new URL(s,document.baseURI).href),await(await fetch(s)).text()}catch{throw e=void 0,new Error("The script for other websites could not be loaded.")}};return()=>e??=t()}var Eh={interfaces:()=>!0,cables:({outer_diameter_m:{value:s}})=>Number.isFinite(s),bands:({regions:s})=>Object.keys(s).length>0,modes:({duty_factor:{value:s}})=>Number.isFinite(s)},Ks=s=>typeof s=="string";function xt(s){let e=JSON.parse(s),t=Object.entries(Eh).every(([n,a])=>(e[n]??[]).every(i=>Ks(i.id)&&Ks(i.name)&&a(i)));if(!Ks(e.id)||!Ks(e.name)||!t)throw new TypeError("no pack");return{text:s,id:e.id,name:e.name}}var jh={key:"jointwise-packs",blocked:"This browser keeps nothing for the page: your packs end when it is closed. Keep their files.",full:"This browser has no room for all of your packs: they end when the page is closed. Keep their files.",spoilt:"The packs kept in this browser could not be read and were set aside. Save them as a file to look for what is left."},Yd=new fe(jh,({own:s,server:e})=>({own:s.map(({text:t,on:n,refused:a})=>({...xt(t),on:n===!0,refused:String(a??"")})),server:e.map(({text:t})=>xt(t))})),Ys=class{server=[];own=[];problem="";spoilt;#e;#t=new Set;constructor(e){this.#e=e;let{document:t,problem:n,spoilt:a}=Yd.recalled(e);Object.assign(this,t,{problem:n,spoilt:a})}listen(e){return this.#t.add(e),()=>this.#t.delete(e)}get inForce(){return[...this.server,...this.own.filter(({on:e})=>e)]}get hasOwn(){return this.own.some(({on:e})=>e)}with(e,t){let n;try{({id:n}=xt(e))}catch{}return[...Yi(this.inForce.filter(a=>a.id!==n||this.server.includes(a))),{label:t,text:e}]}put(e){let t={...xt(e),on:!0,refused:""},n=this.own.findIndex(({id:a})=>a===t.id);this.own=n===-1?[...this.own,t]:this.own.with(n,t),this.#s()}turn(e,t,n=""){this.own=this.own.map(a=>a.id===e.id?{...a,on:t,refused:n}:a),this.#s()}remove(e){this.own=this.own.filter(({id:t})=>t!==e.id),this.#s()}takeServer(e){let t=e.map(xt);JSON.stringify(t)!==JSON.stringify(this.server)&&(this.server=t,this.#s())}#s(){this.problem=Yd.remember(this.#e,{own:this.own,server:this.server});for(let e of this.#t)e()}},Yi=s=>s.map(({name:e,text:t})=>({label:e,text:t}));var Ah=15e3;function Xd({http:s,worker:e,answers:t}){let n,a;async function i(){Date.now()-a<Ah||(a=Date.now(),await t()&&(n=void 0))}async function r(...l){let c=n;try{return await e.ask(...l)}catch(h){throw Ut(h)?(n=void 0,c):h}}return{async ask(...l){if(n)return i(),r(...l);try{return await s.ask(...l)}catch(c){if(!Ut(c))throw c;return n=c,a=Date.now(),r(...l)}}}}function Zd(s){return async()=>{try{return(await fetch(new URL("health",s),{cache:"no-store"})).ok}catch{return!1}}}var Jd=6e4;function Qd(s){return{async ask(e,t,{signal:n}={}){let a=AbortSignal.timeout(Jd),i,r;try{i=await fetch(new URL(e,s),{method:"POST",headers:{"Content-Type":"application/json",Accept:"application/json, application/problem+json"},body:JSON.stringify(t),signal:n?AbortSignal.any([n,a]):a}),r=await i.json()}catch{n?.throwIfAborted();let l=a.aborted?`The core gave no answer within ${Jd/1e3} seconds; try again.`:"The core cannot be reached; check that it is running, then try again.";throw new ft(l)}if(!i.ok)throw new me(r);return r}}}function e1({plain:s,worker:e,shelf:t}){return{async ask(n,a,{packs:i,...r}={}){if(i)return e.ask(n,a,{...r,packs:i});let l=t.hasOwn||a.search==="thorough"?e:s;try{return await l.ask(n,a,{...r,packs:Yi(t.inForce)})}catch(c){let{field:h,message:b}=c,_=t.own.find(({name:$,on:k})=>k&&h?.startsWith(`${$}: `));if(!_)throw c;return t.turn(_,!1,b),this.ask(n,a,r)}}}}async function t1(s){let e=await fetch(new URL("packs.json",s),{cache:"no-store"});if(!e.ok)throw new Error(`packs.json: ${e.status}`);return(await e.json()).map(({text:t})=>t)}function s1(s){let e=URL.createObjectURL(new Blob([s],{type:"text/javascript"}));try{return new Worker(e)}finally{URL.revokeObjectURL(e)}}var Oh=s=>s/2**32|0,Th=s=>s>>>0;function n1(s,e,t,n){let a=Oh(t),i=Th(t);s.setUint32(e,n?i:a,n),s.setUint32(e+4,n?a:i,n)}function a1(s){return s instanceof Uint8Array||ArrayBuffer.isView(s)&&s.constructor.name==="Uint8Array"&&"BYTES_PER_ELEMENT"in s&&s.BYTES_PER_ELEMENT===1}var Xi=s=>s?`"${s}" `:"";function Ch(s,e=""){if(typeof s!="number")throw new TypeError(Xi(e)+"expected number, got "+typeof s);if(!Number.isSafeInteger(s)||s<0)throw new RangeError(Xi(e)+"expected integer >= 0, got "+s);return s}function Xs(s,e,t=""){if(a1(s)&&(e===void 0||s.length===e))return s;e!==void 0&&Ch(e,"length");let n=a1(s),a=e!==void 0?` of length ${e}`:"",i=n?`length=${s.length}`:`type=${typeof s}`,r=Xi(t)+"expected Uint8Array"+a+", got "+i;throw n?new RangeError(r):new TypeError(r)}var zh=(s,e)=>{if(s===null||typeof s!="object"||Array.isArray(s))throw new TypeError((e==="object"?"":`"${e}" `)+"expected object, got type="+typeof s)},i1=(s,e)=>{zh(s,e);let t=Object.getPrototypeOf(s);if(t!==Object.prototype&&t!==null)throw new TypeError(`"${e}" expected plain object`);if(Object.hasOwn(s,"__proto__"))throw new TypeError(`"${e}.__proto__" is not allowed`)};function Zi(s,e=!0){if(s.destroyed)throw new Error("hash was destroyed");if(e&&s.finished)throw new Error("digest() was already called")}function r1(s,e){Xs(s,void 0,"output");let t=e.outputLen;if(!(s.length>=t))throw new RangeError('"output" expected length >= '+t)}function Ji(...s){for(let e=0;e<s.length;e++)s[e].fill(0)}function Zs(s){return new DataView(s.buffer,s.byteOffset,s.byteLength)}function re(s,e){return s<<32-e|s>>>e}var Rh=typeof Uint8Array.from([]).toHex=="function"&&typeof Uint8Array.fromHex=="function",Mh=Array.from({length:256},(s,e)=>e.toString(16).padStart(2,"0"));function o1(s){if(Xs(s),Rh)return s.toHex();let e="";for(let t=0;t<s.length;t++)e+=Mh[s[t]];return e}function Lh(s,e,t="opts"){return i1(s,"defaults"),e!==void 0&&i1(e,t),Object.assign(Object.create(null),s,e)}function l1(s,e={}){if(typeof s!="function")throw new TypeError('"hashCons" expected function, got type='+typeof s);e=Lh({},e,"info");let t=(a,i)=>s(i).update(a).digest(),n=s(void 0);return t.outputLen=n.outputLen,t.blockLen=n.blockLen,t.canXOF=n.canXOF,t.create=a=>s(a),Object.assign(t,e),Object.freeze(t)}var d1=s=>({oid:Uint8Array.from([6,9,96,134,72,1,101,3,4,2,s])});function c1(s,e,t){return s&e^~s&t}function f1(s,e,t){return s&e^s&t^e&t}var Js=class{blockLen;outputLen;canXOF=!1;padOffset;isLE;buffer;view;finished=!1;length=0;pos=0;destroyed=!1;constructor(e,t,n,a){this.blockLen=e,this.outputLen=t,this.padOffset=n,this.isLE=a,this.buffer=new Uint8Array(e),this.view=Zs(this.buffer)}update(e){Zi(this),Xs(e);let{view:t,buffer:n,blockLen:a}=this,i=e.length,r=!1;for(let l=0;l<i;){let c=Math.min(a-this.pos,i-l);if(c===a){let h=Zs(e);for(;a<=i-l;l+=a)this.process(h,l);r=!0;continue}n.set(l===0&&c===i?e:e.subarray(l,l+c),this.pos),this.pos+=c,l+=c,this.pos===a&&(this.process(t,0),this.pos=0,r=!0)}return this.length+=e.length,r&&this.roundClean(),this}digestInto(e){Zi(this),r1(e,this),this.finished=!0;let{buffer:t,view:n,blockLen:a,isLE:i}=this,{pos:r}=this;t[r++]=128,t.fill(0,r),this.padOffset>a-r&&(this.process(n,0),t.fill(0)),n1(n,a-8,this.length*8,i),this.process(n,0),this.roundClean();let l=e===t?n:Zs(e),c=this.outputLen,h=c/4,b=this.get();if(c%4||h>b.length)throw new Error("invalid outputLen");for(let _=0;_<h;_++)l.setUint32(4*_,b[_],i)}digest(){let{buffer:e,outputLen:t}=this;this.digestInto(e);let n=e.slice(0,t);return this.destroy(),n}_cloneIntoMeta(e){let{buffer:t,length:n,finished:a,destroyed:i,pos:r}=this;return e.destroyed=i,e.finished=a,e.length=n,e.pos=r,r&&e.buffer.set(t),e}clone(){return this._cloneInto()}},u1=Uint32Array.from([1779033703,3144134277,1013904242,2773480762,1359893119,2600822924,528734635,1541459225]);var Nh=Uint32Array.from([1116352408,1899447441,3049323471,3921009573,961987163,1508970993,2453635748,2870763221,3624381080,310598401,607225278,1426881987,1925078388,2162078206,2614888103,3248222580,3835390401,4022224774,264347078,604807628,770255983,1249150122,1555081692,1996064986,2554220882,2821834349,2952996808,3210313671,3336571891,3584528711,113926993,338241895,666307205,773529912,1294757372,1396182291,1695183700,1986661051,2177026350,2456956037,2730485921,2820302411,3259730800,3345764771,3516065817,3600352804,4094571909,275423344,430227734,506948616,659060556,883997877,958139571,1322822218,1537002063,1747873779,1955562222,2024104815,2227730452,2361852424,2428436474,2756734187,3204031479,3329325298]),Re=new Uint32Array(64),Qi=class extends Js{A=0;B=0;C=0;D=0;E=0;F=0;G=0;H=0;constructor(e,t){super(64,e,8,!1),this.A=t[0]|0,this.B=t[1]|0,this.C=t[2]|0,this.D=t[3]|0,this.E=t[4]|0,this.F=t[5]|0,this.G=t[6]|0,this.H=t[7]|0}get(){let{A:e,B:t,C:n,D:a,E:i,F:r,G:l,H:c}=this;return[e,t,n,a,i,r,l,c]}set(e,t,n,a,i,r,l,c){this.A=e|0,this.B=t|0,this.C=n|0,this.D=a|0,this.E=i|0,this.F=r|0,this.G=l|0,this.H=c|0}_cloneInto(e){return(e||=new this.constructor).set(...this.get()),this._cloneIntoMeta(e)}process(e,t){for(let _=0;_<16;_++,t+=4)Re[_]=e.getUint32(t,!1);for(let _=16;_<64;_++){let $=Re[_-15],k=Re[_-2],C=re($,7)^re($,18)^$>>>3,F=re(k,17)^re(k,19)^k>>>10;Re[_]=F+Re[_-7]+C+Re[_-16]|0}let{A:n,B:a,C:i,D:r,E:l,F:c,G:h,H:b}=this;for(let _=0;_<64;_++){let $=re(l,6)^re(l,11)^re(l,25),k=b+$+c1(l,c,h)+Nh[_]+Re[_]|0,F=(re(n,2)^re(n,13)^re(n,22))+f1(n,a,i)|0;b=h,h=c,c=l,l=r+k|0,r=i,i=a,a=n,n=k+F|0}n=n+this.A|0,a=a+this.B|0,i=i+this.C|0,r=r+this.D|0,l=l+this.E|0,c=c+this.F|0,h=h+this.G|0,b=b+this.H|0,this.set(n,a,i,r,l,c,h,b)}roundClean(){Ji(Re)}destroy(){this.destroyed=!0,this.set(0,0,0,0,0,0,0,0),Ji(this.buffer)}},er=class extends Qi{constructor(){super(32,u1)}};var h1=l1(()=>new er,d1(1));async function Ph(s){let e=new DecompressionStream("gzip"),t=e.writable.getWriter(),n=t.write(s).then(()=>t.close()),[a]=await Promise.all([new Response(e.readable).arrayBuffer(),n]);return new Uint8Array(a)}async function m1({bytes:s,sha256:e},t){if(o1(h1(s))!==e)throw new Error(`part ${t} is not the one this page was built with`);return Ph(s)}var Qs=class{#e;#t;#s=!1;constructor({payload:e,createWorker:t=s1,hear:n}){this.#e=n,this.#n(e,t).catch(a=>this.#i(Ur(String(a))))}send(e){this.#t?.postMessage(e)}end(){this.#s=!0,this.#t?.terminate()}async#n(e,t){let{worker:n,...a}=await e.read(),i=this.#a(n,t,Object.keys(a)),r=async([l,c])=>{let[h]=await Promise.all([c,i]);this.#s||this.send(Hr(l,h))};await Promise.all([i,...Object.entries(a).map(r)])}async#a(e,t,n){let a=new TextDecoder().decode(await m1(await e,"worker"));if(this.#s)return;let i=l=>this.#i(Fr(l.message??"the worker could not be started")),r=t(a);r.onmessage=({data:l})=>this.#i(l),r.onerror=i,r.onmessageerror=i,this.#t=r,this.send(Ir(n))}#i(e){this.#s||this.#e(e)}};var p1=12e4,qh=2e4,Wh=3e3,Ih=1e3,Hh=2,Bh="The calculation core cannot be started in this browser; only the built-in tables can be shown.",Uh="The calculation core broke down over this request; change it, or try again.",Fh=s=>`The core gave no answer within ${s} seconds; try again.`;function g1({payload:s,longestS:e,createWorker:t,onProgress:n=()=>{}}){let a=new tr(i=>new Qs({payload:s,createWorker:t,hear:i}),e,n);return{start:()=>a.start(),ask:(i,r,l={})=>a.ask(i,r,l)}}var tr=class{#e;#t;#s;#n=0;#a=[];#i;#r;#o=!1;#f;constructor(e,t,n){this.#e=e,this.#t=t,this.#s=n}ask(e,t,{signal:n,packs:a}){return new Promise((i,r)=>{n?.throwIfAborted();let l=new TextEncoder().encode(JSON.stringify(t)),c={number:++this.#n,operation:e,body:l,packs:a,tries:0,unwanted:!1,resolve:i,reject:r};n?.addEventListener("abort",()=>this.#g(c,n.reason),{once:!0}),this.#a.push(c),this.#l()})}start(){this.#r===void 0&&(this.#r=this.#e(e=>this.#d[e.kind](e)),this.#c(p1,()=>this.#d.died()))}#l(){if(this.#a.length===0||(this.start(),!this.#o||this.#i))return;let e=this.#a.shift();this.#i=e,e.tries++,this.#r?.send(Br(e.number,e.operation,e.body,e.packs)),this.#c(qh,()=>this.#d.died())}#d={stage:({name:e})=>{this.#s(e),this.#o=e===et,this.#o?this.#h():this.#c(p1,()=>this.#d.died()),this.#l()},unable:({reason:e})=>{console.info(e),this.#s(""),this.#u();for(let t of this.#a.splice(0))t.reject(new ft(Bh))},taken:()=>this.#m(),answer:({number:e,body:t})=>this.#p(e,n=>n.resolve(JSON.parse(new TextDecoder().decode(t)))),refused:({number:e,refusal:t})=>this.#p(e,n=>n.reject(new me(t))),died:({reason:e}={})=>{if(!this.#o)return this.#d.unable({reason:e??"the worker fell silent while starting"});let t=this.#i;this.#u(),t&&!t.unwanted&&(t.tries<Hh?this.#a.unshift(t):t.reject(new me({detail:Uh}))),this.#l()}};#m(){let e=this.#i,t=this.#t[e.operation];this.#c(e.unwanted?Wh:t*1e3,()=>{this.#u(),e.reject(new me({detail:Fh(t)})),this.#l()})}#p(e,t){let n=this.#i;n?.number===e&&(this.#h(),this.#i=void 0,t(n),this.#l())}#g(e,t){e.reject(t),e.unwanted=!0,e===this.#i?this.#m():this.#a=this.#a.filter(n=>n!==e)}#u(){this.#h(),this.#r?.end(),this.#r=void 0,this.#i=void 0,this.#o=!1}#c(e,t){clearTimeout(this.#f);let n=Math.min(e,Ih);this.#f=setTimeout(e>n?()=>this.#c(e-n,t):t,n)}#h(){clearTimeout(this.#f)}};function b1(s){let e=async t=>{let n=await fetch(new URL(t,s));if(!n.ok)throw new Error(`${t} is not to be had: ${n.status}`);return n};return{async read(){let{parts:t}=await(await e("payload.json")).json(),n=async({file:a,sha256:i})=>({bytes:new Uint8Array(await(await e(a)).arrayBuffer()),sha256:i});return Object.fromEntries(t.map(a=>[a.name,n(a)]))}}}async function _1(s,e){let{serviceWorker:t}=navigator;if(!t)return;let n=await t.register(s),a=()=>{if(!n.waiting)return location.reload();t.addEventListener("controllerchange",()=>location.reload(),{once:!0}),n.waiting.postMessage(Dr())},i=()=>n.waiting&&t.controller&&e(a);n.addEventListener("updatefound",()=>n.installing?.addEventListener("statechange",i)),i()}var ve=document.querySelector("jw-app"),sr=new URL("api/v1/",document.baseURI),w1=g1({payload:b1(new URL("payload/",document.baseURI)),longestS:ir,onProgress:s=>ve.stage=s}),Dh=Xd({http:Qd(sr),worker:w1,answers:Zd(sr)});ve.shelf=new Ys(()=>localStorage);ve.transport=e1({plain:Dh,worker:w1,shelf:ve.shelf});t1(sr).then(s=>ve.shelf.takeServer(s),s=>console.info(String(s)));ve.loadCharts=Vd("charts.js");ve.loadEmbed=Kd("embed.js");ve.file="jointwise.html";_1("service-worker.js",s=>ve.offerUpdate(s)).catch(s=>console.info(String(s)));

var xc={matrix:60,cell:60,question:60,snapshot:60,choose:60,line:60,spread:60,sweep:60,span:60,fitout:60,kit:300,catalogue:60};var z={version:"0.5.0",requests:{matrix:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable:{nullable:!0,type:"text",longest:40,default:null},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},families:{nullable:!0,type:"list",items:{type:"text",longest:40},least:1,most:100,default:null},bands:{nullable:!0,type:"list",items:{type:"text",longest:40},least:0,most:100,default:null},frequencies_hz:{nullable:!1,type:"list",items:{unit:"Hz",type:"number",min:1e5,max:5e10},least:0,most:200,default:[]},powers_w:{nullable:!1,type:"list",items:{unit:"W",type:"number",min:0,max:1e5},least:1,most:24,default:[0,5,50,100,400,1500]}},cell:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable:{nullable:!0,type:"text",longest:40,default:null},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},family:{nullable:!1,type:"text",longest:40,default:null},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100}},question:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable:{nullable:!0,type:"text",longest:40,default:null},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},text:{nullable:!1,type:"text",longest:300,default:""},family:{nullable:!0,type:"text",longest:40,default:null},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100}},snapshot:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable:{nullable:!0,type:"text",longest:40,default:null},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},families:{nullable:!0,type:"list",items:{type:"text",longest:40},least:1,most:100,default:null},bands:{nullable:!0,type:"list",items:{type:"text",longest:40},least:0,most:100,default:null},frequencies_hz:{nullable:!1,type:"list",items:{unit:"Hz",type:"number",min:1e5,max:5e10},least:0,most:200,default:[]},powers_w:{nullable:!1,type:"list",items:{unit:"W",type:"number",min:0,max:1e5},least:1,most:24,default:[0,5,50,100,400,1500]},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100}},choose:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable:{nullable:!0,type:"text",longest:40,default:null},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},use:{nullable:!1,type:"choice",choices:["receive","transmit"],default:"transmit"},bands:{nullable:!1,type:"list",items:{type:"text",longest:40},least:0,most:100,default:["20m"]},frequencies_hz:{nullable:!1,type:"list",items:{unit:"Hz",type:"number",min:1e5,max:5e10},least:0,most:200,default:[]},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},margin_asked_db:{nullable:!1,unit:"dB",type:"number",min:0,max:20,default:3},dc_current_a:{nullable:!1,unit:"A",type:"number",min:0,max:50,default:0},dc_voltage_v:{nullable:!1,unit:"V",type:"number",min:0,max:100,default:12},installation:{nullable:!1,type:"text",longest:40,default:"fixed"},port:{nullable:!0,type:"text",longest:40,default:null},largest_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},plan:{nullable:!0,type:"text",longest:40,default:null}},line:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:1,most:60,default:null},load:{nullable:!1,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},transmitter:{nullable:!1,default:{behaviour:"transceiver",holds_to_vswr:null}},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},receiver:{nullable:!1,default:{noise_figure_db:6,environment:"rural",antenna_view:"horizon",elevation_deg:30,antenna_temperature_k:null,preamplifier:null}},explain:{nullable:!0,type:"number",min:0,max:59,default:null}},spread:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:1,most:60,default:null},load:{nullable:!1,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},transmitter:{nullable:!1,default:{behaviour:"transceiver",holds_to_vswr:null}},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},draws:{nullable:!1,type:"number",min:100,max:1e5,default:1e4},seed:{nullable:!1,type:"number",min:0,max:4294967295,default:1},length_tolerance:{nullable:!1,type:"number",min:0,max:.5,default:.02}},sweep:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:0,most:16,default:null},load:{nullable:!0,default:null},touchstone:{nullable:!1,type:"text",longest:3e6,default:null},earlier:{nullable:!0,type:"text",longest:3e6,default:null},velocity_factor:{nullable:!1,type:"number",min:.3,max:1,default:.66},length_tolerance:{nullable:!1,type:"number",min:.001,max:.1,default:.02},window_shape:{nullable:!0,type:"number",min:.5,max:14,default:null}},span:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:0,most:16,default:[]},length_m:{nullable:!1,unit:"m",type:"number",min:.01,max:1e4,default:30},velocity_factor:{nullable:!1,unit:"1",type:"number",min:.3,max:1,default:.66},lowest_hz:{nullable:!1,unit:"Hz",type:"number",min:1e5,max:5e10,default:1e6},highest_hz:{nullable:!1,unit:"Hz",type:"number",min:1e5,max:5e10,default:9e8},most_points:{nullable:!1,type:"number",min:16,max:10001,default:201}},fitout:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:1,most:60,default:null},station:{nullable:!1,type:"text",longest:60,default:""},date:{nullable:!1,type:"text",longest:10,default:""},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null}},kit:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable:{nullable:!0,type:"text",longest:40,default:null},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},ports:{nullable:!1,type:"list",items:{},least:2,most:60,default:null},pairs:{nullable:!0,type:"list",items:{type:"list",items:{type:"number",min:0,max:59},least:2,most:2},least:0,most:400,default:null},owned:{nullable:!1,type:"list",items:{},least:0,most:200,default:[]},goal:{nullable:!1,type:"choice",choices:["best_joints","fewest"],default:"fewest"},most_in_series:{nullable:!1,type:"number",min:1,max:4,default:2},most_loss_db:{nullable:!1,unit:"dB",type:"number",min:.01,max:20,default:.5},impedance_steps:{nullable:!1,type:"boolean",default:!1},search:{nullable:!1,type:"choice",choices:["quick","thorough"],default:"quick"}},catalogue:{entry:{nullable:!0,type:"text",longest:40,default:null},cable:{nullable:!0,type:"text",longest:40,default:null}}},parts:{CableRun:{cable:{nullable:!1,type:"text",longest:40,default:null},length_m:{nullable:!1,unit:"m",type:"number",min:.01,max:1e4,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},DummyLoad:{vswr:{nullable:!1,type:"number",min:1,max:20,default:1.1},power_limit_w:{nullable:!0,unit:"W",type:"number",min:.001,max:1e6,default:null}},GivenImpedance:{resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:1e6,default:null},reactance_ohm:{nullable:!1,unit:"Ω",type:"number",min:-1e6,max:1e6,default:0}},GivenVswr:{vswr:{nullable:!1,type:"number",min:1,max:100,default:null},angle_deg:{nullable:!0,unit:"°",type:"number",min:-360,max:360,default:null}},ImpedancePoint:{frequency_hz:{nullable:!1,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:1e6,default:null},reactance_ohm:{nullable:!1,unit:"Ω",type:"number",min:-1e6,max:1e6,default:0}},ImpedanceTable:{points:{nullable:!1,type:"list",items:{},least:2,most:2e3,default:null}},Joint:{family:{nullable:!1,type:"text",longest:40,default:null},adapter_to:{nullable:!0,type:"text",longest:40,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},exposure:{nullable:!0,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:null},name:{nullable:!1,type:"text",longest:60,default:""}},KnownEnd:{what:{nullable:!1,type:"choice",choices:["matched","open","short"],default:null}},MeasuredLoad:{touchstone:{nullable:!1,type:"text",longest:3e6,default:null}},MeasuredPart:{touchstone:{nullable:!1,type:"text",longest:3e6,default:null},power_limit_w:{nullable:!0,unit:"W",type:"number",min:.001,max:1e6,default:null},voltage_limit_v:{nullable:!0,unit:"V",type:"number",min:1,max:1e6,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},OwnedAdapter:{one_family:{nullable:!1,type:"text",longest:40,default:null},one_gender:{nullable:!1,type:"choice",choices:["jack","plug"],default:null},other_family:{nullable:!1,type:"text",longest:40,default:null},other_gender:{nullable:!1,type:"choice",choices:["jack","plug"],default:null},count:{nullable:!1,type:"number",min:1,max:20,default:1}},Part:{what:{nullable:!1,type:"choice",choices:["arrester","attenuator","divider","filter","meter","other","switch"],default:"other"},loss_db:{nullable:!1,unit:"dB",type:"number",min:0,max:100,default:null},vswr:{nullable:!1,type:"number",min:1,max:20,default:1},power_limit_w:{nullable:!0,unit:"W",type:"number",min:.001,max:1e6,default:null},voltage_limit_v:{nullable:!0,unit:"V",type:"number",min:1,max:1e6,default:null},directivity_db:{nullable:!0,unit:"dB",type:"number",min:0,max:80,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},Port:{family:{nullable:!1,type:"text",longest:40,default:null},gender:{nullable:!1,type:"choice",choices:["jack","plug"],default:null},highest_frequency_hz:{nullable:!1,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},impedance_ohm:{nullable:!0,unit:"Ω",type:"number",min:25,max:150,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},Preamplifier:{before_element:{nullable:!1,type:"number",min:0,max:59,default:null},gain_db:{nullable:!1,unit:"dB",type:"number",min:0,max:60,default:15},noise_figure_db:{nullable:!1,unit:"dB",type:"number",min:0,max:60,default:1}},Receiver:{noise_figure_db:{nullable:!1,unit:"dB",type:"number",min:0,max:60,default:6},environment:{nullable:!1,type:"text",longest:40,default:"rural"},antenna_view:{nullable:!1,type:"text",longest:40,default:"horizon"},elevation_deg:{nullable:!1,unit:"°",type:"number",min:0,max:90,default:30},antenna_temperature_k:{nullable:!0,unit:"K",type:"number",min:1,max:1e9,default:null},preamplifier:{nullable:!0,default:null}},ResonantAntenna:{resonance_hz:{nullable:!1,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.2},bandwidth_hz:{nullable:!1,unit:"Hz",type:"number",min:100,max:1e10,default:null},bandwidth_vswr:{nullable:!1,type:"number",min:1.01,max:20,default:2}},Section:{impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:10,max:1e3,default:null},length_m:{nullable:!1,unit:"m",type:"number",min:.01,max:1e4,default:null},velocity_factor:{nullable:!1,type:"number",min:.2,max:1,default:1},loss_db:{nullable:!1,unit:"dB",type:"number",min:0,max:100,default:0},voltage_limit_v:{nullable:!0,unit:"V",type:"number",min:1,max:1e6,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},Transformer:{ratio:{nullable:!1,type:"number",min:.01,max:100,default:1},loss_db:{nullable:!1,unit:"dB",type:"number",min:0,max:100,default:.2},choking_ohm:{nullable:!0,unit:"Ω",type:"number",min:1,max:1e6,default:null},power_limit_w:{nullable:!0,unit:"W",type:"number",min:.001,max:1e6,default:null},voltage_limit_v:{nullable:!0,unit:"V",type:"number",min:1,max:1e6,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},Transmitter:{behaviour:{nullable:!1,type:"text",longest:40,default:"transceiver"},holds_to_vswr:{nullable:!0,type:"number",min:1.01,max:100,default:null}},Tuner:{network:{nullable:!1,type:"choice",choices:["l","pi","t"],default:"t"},coil_q:{nullable:!1,type:"number",min:5,max:1e4,default:100},capacitor_q:{nullable:!1,type:"number",min:5,max:1e5,default:1e3},largest_capacitor_f:{nullable:!0,unit:"F",type:"number",min:1e-12,max:1e-7,default:null},largest_coil_h:{nullable:!1,unit:"H",type:"number",min:1e-9,max:.001,default:3e-5},voltage_limit_v:{nullable:!0,unit:"V",type:"number",min:1,max:1e6,default:null},current_limit_a:{nullable:!0,unit:"A",type:"number",min:.001,max:1e4,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},WireRun:{line:{nullable:!1,type:"text",longest:40,default:null},length_m:{nullable:!1,unit:"m",type:"number",min:.01,max:1e4,default:null},name:{nullable:!1,type:"text",longest:60,default:""}}},bands:[{id:"2200m",name:"2200 m",regions:["1","2","3"]},{id:"630m",name:"630 m",regions:["1","2","3"]},{id:"160m",name:"160 m",regions:["1","2","3"]},{id:"80m",name:"80 m",regions:["1","2","3"]},{id:"60m",name:"60 m",regions:["1","2","3"]},{id:"40m",name:"40 m",regions:["1","2","3"]},{id:"30m",name:"30 m",regions:["1","2","3"]},{id:"20m",name:"20 m",regions:["1","2","3"]},{id:"17m",name:"17 m",regions:["1","2","3"]},{id:"15m",name:"15 m",regions:["1","2","3"]},{id:"12m",name:"12 m",regions:["1","2","3"]},{id:"10m",name:"10 m",regions:["1","2","3"]},{id:"6m",name:"6 m",regions:["1","2","3"]},{id:"4m",name:"4 m",regions:["1"]},{id:"2m",name:"2 m",regions:["1","2","3"]},{id:"1_25m",name:"1.25 m",regions:["2"]},{id:"70cm",name:"70 cm",regions:["1","2","3"]},{id:"33cm",name:"33 cm",regions:["2"]},{id:"23cm",name:"23 cm",regions:["1","2","3"]},{id:"13cm",name:"13 cm",regions:["1","2","3"]},{id:"9cm",name:"9 cm",regions:["1","2","3"]},{id:"5cm",name:"5 cm",regions:["1","2","3"]},{id:"3cm",name:"3 cm",regions:["1","2","3"]},{id:"1_2cm",name:"1.2 cm",regions:["1","2","3"]},{id:"6mm",name:"6 mm",regions:["1","2","3"]}],families:[{id:"uhf",name:"UHF",also_called:["PL-259 / SO-239"]},{id:"mini_uhf",name:"Mini-UHF",also_called:["Miniature UHF"]},{id:"bnc",name:"BNC",also_called:["BNC 50 Ω"]},{id:"bnc_75",name:"BNC 75 Ω",also_called:["75 Ω BNC"]},{id:"tnc",name:"TNC",also_called:["Threaded BNC"]},{id:"n",name:"N",also_called:["Type N"]},{id:"n_75",name:"N 75 Ω",also_called:["75 Ω type N"]},{id:"c",name:"C",also_called:["Type C"]},{id:"hn",name:"HN",also_called:["High-voltage N"]},{id:"7_16",name:"7/16",also_called:["7-16 DIN"]},{id:"4_3_10",name:"4.3-10",also_called:[]},{id:"sma",name:"SMA",also_called:["Subminiature A"]},{id:"rp_sma",name:"RP-SMA",also_called:["Reverse polarity SMA"]},{id:"smb",name:"SMB",also_called:["Subminiature B"]},{id:"mcx",name:"MCX",also_called:["Micro coaxial"]},{id:"mmcx",name:"MMCX",also_called:["Micro-miniature coaxial"]},{id:"f",name:"F",also_called:["F type"]},{id:"3_5mm",name:"3.5 mm",also_called:[]},{id:"2_92mm",name:"2.92 mm",also_called:[]}],modes:[{id:"ssb",name:"SSB, conversation",duty_factor:{value:.2,source:"fcc_oet_65b",kind:"handbook",note:"no speech processing"},on_time_s:null,off_time_s:null,note:"",typed_as:["SSB","USB","LSB","sideband","single sideband","phone","voice","SSB voice"]},{id:"ssb_processed",name:"SSB, processed",duty_factor:{value:.5,source:"fcc_oet_65b",kind:"handbook",note:"heavy speech processing; a later list gives 0.4"},on_time_s:null,off_time_s:null,note:"",typed_as:["processed SSB","compressed SSB","SSB with compression","SSB with processing","SSB with a processor","contest SSB"]},{id:"cw",name:"CW, conversation",duty_factor:{value:.4,source:"fcc_oet_65b",kind:"handbook",note:""},on_time_s:null,off_time_s:null,note:"",typed_as:["CW","Morse","Morse code","telegraphy"]},{id:"cw_eme",name:"CW, EME",duty_factor:{value:.44,source:"mode_comparison",kind:"handbook",note:"the word PARIS over and over, 22 of 50 dots with the key down"},on_time_s:{value:150,source:"eme_handbook_1988",kind:"handbook",note:"twelve periods to the half hour"},off_time_s:{value:150,source:"eme_handbook_1988",kind:"handbook",note:"the other station's period"},note:"Sends without a break for every other period of 2.5 min, the custom on 432 MHz and above; 2 min on 144 MHz heats no more.",typed_as:["CW EME","EME CW"]},{id:"fm",name:"FM voice",duty_factor:{value:1,source:"fcc_oet_65b",kind:"handbook",note:""},on_time_s:null,off_time_s:null,note:"",typed_as:["FM","NBFM","NFM","FM repeater"]},{id:"dmr",name:"DMR, one time slot",duty_factor:{value:.5,source:"etsi_ts_102_361",kind:"handbook",note:"one slot of 30 ms in two, constant envelope in it; the burst itself, 27.5 ms, would make it 0.46"},on_time_s:null,off_time_s:null,note:"What a handheld or mobile sends. A repeater sends both slots: take FM voice for it.",typed_as:["DMR"]},{id:"am",name:"AM voice (PEP is 4 × carrier)",duty_factor:{value:.375,source:"am_article_2002",kind:"handbook",note:"full modulation by a sine, (1 + 1/2)/4: voice lies between it and 0.25, the carrier alone; one exposure list prints 1.0 without saying of which power"},on_time_s:null,off_time_s:null,note:"With the power given as peak envelope power; 100 W for a carrier of 25 W.",typed_as:["AM"]},{id:"rtty",name:"RTTY, FSK or AFSK",duty_factor:{value:1,source:"fcc_oet_65b",kind:"handbook",note:""},on_time_s:null,off_time_s:null,note:"",typed_as:["RTTY","FSK","AFSK","teletype"]},{id:"psk31",name:"PSK31",duty_factor:{value:.75,source:"mode_comparison",kind:"handbook",note:"as many ones as zeros; 0.5 while idle, two tones"},on_time_s:null,off_time_s:null,note:"",typed_as:["PSK31","PSK","BPSK31"]},{id:"ft8",name:"FT8",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:12.64,source:"weak_signal_guide",kind:"handbook",note:"79 symbols at 6.25 baud"},off_time_s:{value:17.36,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other 15 s sequence: 12.64 s on, 17.36 s off, 42 % of the time.",typed_as:["FT8"]},{id:"ft4",name:"FT4",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:5.04,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:9.96,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other 7.5 s sequence: 5.04 s on, 9.96 s off, 34 % of the time.",typed_as:["FT4"]},{id:"jt65",name:"JT65, EME",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:46.8,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:73.2,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other minute: 46.8 s on, 73.2 s off, 39 % of the time. JT4 and JT9 are within 3 s of it.",typed_as:["JT65","JT9","JT4"]},{id:"q65_60",name:"Q65-60, EME",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:51,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:69,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other minute: 51 s on, 69 s off, 43 % of the time. Q65-30 sends the same share in shorter overs.",typed_as:["Q65-60","Q65"]},{id:"q65_300",name:"Q65-300",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:293.8,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:306.2,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other five minutes, the hardest rhythm of Q65: 293.8 s on, 306.2 s off, 49 % of the time.",typed_as:["Q65-300"]},{id:"msk144",name:"MSK144",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:30,source:"weak_signal_guide",kind:"handbook",note:"frames without gaps through the sequence; chapter on VHF features: 15 s or 30 s by local custom"},off_time_s:{value:30,source:"weak_signal_guide",kind:"handbook",note:"the other station's sequence"},note:"Sends in every other 30 s sequence; 15 s, also customary, heat no more.",typed_as:["MSK144","MSK"]},{id:"wspr",name:"WSPR",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:110.6,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:129.4,source:"common_practice",kind:"common practice",note:"rest of two sequences of 120 s; most beacons send less often"},note:"Sends in every other two-minute sequence, the hardest usual beacon rhythm.",typed_as:["WSPR"]},{id:"sstv",name:"SSTV",duty_factor:{value:1,source:"sstv_chapter_2012",kind:"handbook",note:"follows from the tone plan, one tone at a time: 1200 Hz for sync, 1500 to 2300 Hz for the picture"},on_time_s:null,off_time_s:null,note:"Analogue pictures; one lasts from 36 s (Robot 36) to four and a half minutes (Scottie DX).",typed_as:["SSTV","slow scan","slow-scan TV"]},{id:"carrier",name:"Carrier (tune-up)",duty_factor:{value:1,source:"fcc_oet_65b",kind:"handbook",note:""},on_time_s:null,off_time_s:null,note:"",typed_as:["key down","keydown","carrier","continuous carrier","tune","tune up","tuning","tuning up","steady carrier"]}],conditions:[{id:"new",name:"New and clean",added_resistance_ohm:{value:0,source:"common_practice",kind:"common practice",note:""},typed_as:["new","clean","like new","brand new","good condition"]},{id:"worn",name:"Worn",added_resistance_ohm:{value:.002,source:"mil_prf_39012_slash_sheets",kind:"memory",note:"the greatest growth the sheets allow after conditioning is 0.5 to 2 mΩ, by family"},typed_as:["worn","worn out","well worn"]},{id:"corroded",name:"Corroded",added_resistance_ohm:{value:.05,source:"common_practice",kind:"common practice",note:"a joint that has taken water or lost its plating; single cases are far worse"},typed_as:["corroded","rusty","oxidised","oxidized","green","tarnished"]}],cautions:["A margin is an estimate; the data of your own part, your local codes and your licence come first.","RF burns: never touch or open a joint with power on it. Key down only when everybody is clear.","RF exposure: keep within the exposure limits of your country; work them out before transmitting.","High voltage and mains: switch off, unplug and discharge before you open an amplifier, a tuner or a feed point.","Lightning: bond and earth by your local code, fit arresters, and never work on a line when storms are near.","Heights and masts: trained people, proper gear, never alone and never near power lines."],cables:[{id:"rg_174",name:"RG-174"},{id:"rg_58",name:"RG-58"},{id:"foam_5_mm",name:"Foam 4.95 mm, 200 size"},{id:"rg_223",name:"RG-223"},{id:"rg_213",name:"RG-213"},{id:"rg_8",name:"RG-8 foam"},{id:"rg_214",name:"RG-214"},{id:"rg_217",name:"RG-217"},{id:"rg_8x",name:"RG-8X"},{id:"foam_6_mm",name:"Foam 6.1 mm, 240 size"},{id:"foam_7_mm",name:"Foam 7.3 mm"},{id:"foam_10_mm",name:"Foam 10.3 mm, 400 size"},{id:"foam_10_mm_stranded",name:"Foam 10.2 mm, stranded"},{id:"foam_15_mm",name:"Foam 15 mm, 600 size"},{id:"corrugated_1_2",name:"Corrugated foam 1/2 in"},{id:"corrugated_7_8",name:"Corrugated foam 7/8 in"},{id:"rg_178",name:"RG-178"},{id:"rg_188",name:"RG-188"},{id:"rg_316",name:"RG-316"},{id:"rg_303",name:"RG-303"},{id:"rg_142",name:"RG-142"},{id:"rg_400",name:"RG-400"},{id:"rg_393",name:"RG-393"},{id:"rg_405",name:"RG-405"},{id:"rg_402",name:"RG-402"},{id:"rg_59",name:"RG-59"},{id:"rg_6",name:"RG-6"},{id:"rg_11",name:"RG-11"}],wire_lines:[{id:"window_450_solid",name:"450-class window line, 1.0 mm solid"},{id:"window_450_stranded",name:"450-class window line, 1.0 mm stranded"},{id:"window_450_heavy",name:"450-class window line, 1.6 mm stranded"},{id:"window_300",name:"300-class window line"},{id:"ribbon_300",name:"300 Ω ribbon"},{id:"open_wire_600",name:"600 Ω open wire, 2 mm copper"}],installations:[{id:"fixed",name:"Indoors",exposure:"indoor",vibration:"none",added_sealing:!1},{id:"sheltered",name:"Outdoors, sheltered",exposure:"sheltered",vibration:"none",added_sealing:!1},{id:"outdoors",name:"Outdoors, in the weather",exposure:"exposed",vibration:"none",added_sealing:!1},{id:"mast",name:"Mast or tower",exposure:"exposed",vibration:"vehicle",added_sealing:!1},{id:"mast_taped",name:"Mast or tower, joints taped",exposure:"exposed",vibration:"vehicle",added_sealing:!0},{id:"vehicle",name:"Vehicle, inside",exposure:"indoor",vibration:"vehicle",added_sealing:!1},{id:"vehicle_outside",name:"Vehicle, outside",exposure:"exposed",vibration:"vehicle",added_sealing:!1},{id:"portable",name:"Portable, in the field",exposure:"sheltered",vibration:"none",added_sealing:!1},{id:"handheld",name:"Hand-held",exposure:"sheltered",vibration:"vehicle",added_sealing:!1}],noise_environments:[{id:"city",name:"City"},{id:"residential",name:"Residential"},{id:"rural",name:"Rural"},{id:"quiet_rural",name:"Quiet rural"},{id:"galactic",name:"Galactic"}],transmitters:[{id:"transceiver",name:"Transceiver, folds back",holds_to_vswr:2},{id:"solid_state_amplifier",name:"Transistor amplifier, folds back",holds_to_vswr:2},{id:"valve_amplifier",name:"Valve amplifier with tuned output",holds_to_vswr:3},{id:"keeps_forward",name:"Holds its forward power at any SWR",holds_to_vswr:null}],antenna_views:[{id:"horizon",name:"Horizon"},{id:"sky",name:"Sky"},{id:"cold_sky",name:"Cold sky"}],pack:{shapes:{Adapter:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40,table:"interfaces"},joins:{label:"At the other end",required:!0,type:"list",of:{type:"text",shortest:1,longest:40},least:1,most:50,table:"interfaces"},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},figures:{label:"Figure of a data sheet",required:!1,default:[],type:"list",of:{type:"part",of:"AdapterFigures"},least:0,most:100}},AdapterFigures:{to:{label:"To",required:!0,type:"text",shortest:1,longest:40,table:"interfaces"},loss_db:{label:"Insertion loss",required:!1,default:null,type:"number",unit:"dB",sheet_unit:"dB",min:0,max:20},return_loss_db:{label:"Return loss",required:!1,default:null,type:"number",unit:"dB",sheet_unit:"dB",min:0,max:60},up_to_frequency_hz:{label:"Up to",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},note:{label:"Note",required:!1,default:"",type:"text",shortest:0,longest:600}},Attenuation:{frequency_hz:{label:"Frequency",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},db_per_m:{label:"Loss",required:!0,type:"number",unit:"dB/m",sheet_unit:"dB/100 m",min:1e-6,max:1e3},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},note:{label:"Note",required:!1,default:"",type:"text",shortest:0,longest:600},fit:{label:"Counts in the fit",required:!1,default:!0,type:"boolean"},through:{label:"Of a clad core",required:!1,default:!1,type:"boolean"}},Band:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},name:{label:"Name",required:!0,type:"text",shortest:1,longest:80},regions:{label:"Region",required:!0,type:"map",keys:["1","2","3"],of:{type:"part",of:"BandEdges"}},typed_as:{label:"Also typed as",required:!1,hint:"What people type for it beside its name",default:[],type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:30}},BandEdges:{low_hz:{label:"From",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},high_hz:{label:"To",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},note:{label:"Note",required:!1,default:"",type:"text",shortest:0,longest:600}},Cable:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},name:{label:"Name",required:!0,type:"text",shortest:1,longest:80},order:{label:"Place in lists",required:!0,type:"number",unit:"",sheet_unit:"",min:0,max:1e3},summary:{label:"In one sentence",required:!0,type:"text",shortest:0,longest:600},also_called:{label:"Also called",required:!0,type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:20},dielectric:{label:"Dielectric",required:!0,group:"Size and metal",type:"text",shortest:1,longest:40,choices:{solid_pe:"Solid polyethylene",foam_pe:"Foamed polyethylene",ptfe:"PTFE"}},construction:{label:"Construction",required:!0,group:"Size and metal",type:"choice",choices:{corrugated:"corrugated","semi-rigid":"semi-rigid",solid:"solid",stranded:"stranded"}},outdoor_use:{label:"Weather it stands",required:!0,group:"Wear and sealing",type:"choice",choices:{exposed:"exposed",immersed:"immersed",indoor:"indoor",sheltered:"sheltered"}},impedance_ohm:{label:"Impedance",required:!0,group:"Electrical",type:"quantity",unit:"Ω",sheet_unit:"Ω",min:10,max:300},velocity_factor:{label:"Velocity factor",required:!0,group:"Electrical",type:"quantity",unit:"1",sheet_unit:"1",min:.2,max:1},capacitance_f_per_m:{label:"Capacitance",required:!0,group:"Electrical",type:"quantity",unit:"F/m",sheet_unit:"pF/m",min:1e-12,max:1e-9},outer_diameter_m:{label:"Outer diameter",required:!0,group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:1e-4,max:.5},centre_conductor:{label:"Centre conductor",required:!0,group:"Size and metal",type:"label",unit:"",sheet_unit:"",choices:{gold:"gold",silver:"silver","silvered copper":"silvered copper","silvered copper-clad steel":"silvered copper-clad steel",nickel:"nickel",copper:"copper","copper tube":"copper tube","copper-clad steel":"copper-clad steel","copper-clad aluminium":"copper-clad aluminium",brass:"brass",white_bronze:"white_bronze",stainless:"stainless",tin:"tin","tinned copper":"tinned copper",aluminium:"aluminium",zinc:"zinc","galvanized steel":"galvanized steel"}},jacket:{label:"Jacket",required:!0,group:"Size and metal",type:"label",unit:"",sheet_unit:""},attenuation_temperature_c:{label:"Attenuation holds at",required:!0,group:"Electrical",type:"quantity",unit:"°C",sheet_unit:"°C",min:-50,max:150},attenuation:{label:"Attenuation",required:!0,hint:"At two frequencies at least",group:"Electrical",type:"list",of:{type:"part",of:"Attenuation"},least:2,most:100},power:{label:"Power rating",required:!0,hint:"What is stated for it; held against what is computed",group:"Heat",type:"list",of:{type:"part",of:"CablePower"},least:0,most:100},working_voltage_rms_v:{label:"Working voltage, rms",required:!0,group:"Electrical",type:"interval",unit:"V",sheet_unit:"V",min:1,max:1e5},lowest_temperature_c:{label:"Lowest temperature",required:!0,group:"Heat",type:"quantity",unit:"°C",sheet_unit:"°C",min:-100,max:100},highest_temperature_c:{label:"Highest temperature",required:!0,group:"Heat",type:"quantity",unit:"°C",sheet_unit:"°C",min:20,max:500},fixed_bend_radius_m:{label:"Bend radius, fixed",required:!0,group:"Wear and sealing",type:"quantity",unit:"m",sheet_unit:"mm",min:.001,max:20},repeated_bend_radius_m:{label:"Bend radius, repeated",required:!1,group:"Wear and sealing",default:null,type:"quantity",unit:"m",sheet_unit:"mm",min:.001,max:20},inner_resistance_ohm_per_m:{label:"Inner resistance",required:!1,group:"Electrical",default:null,type:"quantity",unit:"Ω/m",sheet_unit:"Ω/km",min:1e-6,max:100},outer_resistance_ohm_per_m:{label:"Outer resistance",required:!1,group:"Electrical",default:null,type:"quantity",unit:"Ω/m",sheet_unit:"Ω/km",min:1e-6,max:100},build:{label:"Layers",required:!1,hint:"Left out, those of the nearest cable of like insulation and impedance, scaled to its diameter",group:"Size and metal",default:null,type:"part",of:"CableBuild"},fit_note:{label:"Note on the fit",required:!1,group:"Electrical",default:"",type:"text",shortest:0,longest:600},typed_as:{label:"Also typed as",required:!1,hint:"What people type for it beside its name",default:[],type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:30}},CableBuild:{inner_diameter_m:{label:"Inner conductor, diameter",required:!0,hint:"Over the strands where it is stranded",type:"quantity",unit:"m",sheet_unit:"mm",min:1e-5,max:.1},dielectric_diameter_m:{label:"Insulation, diameter",required:!0,type:"quantity",unit:"m",sheet_unit:"mm",min:1e-4,max:.2},screen_diameter_m:{label:"Outer conductor, diameter",required:!0,type:"quantity",unit:"m",sheet_unit:"mm",min:1e-4,max:.2},inner_area_m2:{label:"Inner conductor, metal",required:!0,hint:"In a cross-section",type:"quantity",unit:"m²",sheet_unit:"mm²",min:1e-9,max:.01},screen_area_m2:{label:"Outer conductor, metal",required:!0,hint:"In a cross-section",type:"quantity",unit:"m²",sheet_unit:"mm²",min:1e-9,max:.01},inner_metal:{label:"Inner conductor is of",required:!0,type:"label",unit:"",sheet_unit:"",choices:{copper:"Copper",brass:"Brass",ptfe:"PTFE",pe:"Polyethylene",aluminium:"Aluminium",copper_clad_steel:"Copper-clad steel",copper_clad_steel_thin:"Copper-clad steel, thinly clad",copper_clad_aluminium:"Copper-clad aluminium",pvc:"PVC",fep:"FEP"}},screen_metal:{label:"Outer conductor is of",required:!0,type:"label",unit:"",sheet_unit:"",choices:{copper:"Copper",brass:"Brass",ptfe:"PTFE",pe:"Polyethylene",aluminium:"Aluminium",copper_clad_steel:"Copper-clad steel",copper_clad_steel_thin:"Copper-clad steel, thinly clad",copper_clad_aluminium:"Copper-clad aluminium",pvc:"PVC",fep:"FEP"}},jacket_material:{label:"Jacket is of",required:!1,hint:"Left out, the outer conductor is bare",default:null,type:"label",unit:"",sheet_unit:"",choices:{copper:"Copper",brass:"Brass",pe:"Polyethylene",pvc:"PVC",fep:"FEP"}}},CablePower:{frequency_hz:{label:"Frequency",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},power_w:{label:"Power",required:!0,type:"number",unit:"W",sheet_unit:"W",min:.001,max:1e6},ambient_temperature_c:{label:"Air temperature",required:!0,type:"number",unit:"°C",sheet_unit:"°C",min:-100,max:600},conductor_temperature_c:{label:"Hottest conductor",required:!0,type:"number",unit:"°C",sheet_unit:"°C",min:-100,max:600},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},note:{label:"Note",required:!1,default:"",type:"text",shortest:0,longest:600}},HouseLimit:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},power_w:{label:"At most, in PEP",required:!0,type:"number",unit:"W",sheet_unit:"W",min:0,max:1e5},reason:{label:"Because",required:!0,type:"text",shortest:1,longest:300},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},interfaces:{label:"Through",required:!1,hint:"None chosen: all",default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100,table:"interfaces"},bands:{label:"On",required:!1,hint:"None chosen: all",default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100,table:"bands"}},InsertionLoss:{loss_db:{label:"Insertion loss, at most",required:!0,type:"quantity",unit:"dB",sheet_unit:"dB",min:.001,max:10},at_frequency_hz:{label:"Insertion loss holds to",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11}},Interface:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},name:{label:"Name",required:!0,type:"text",shortest:1,longest:80},order:{label:"Place in lists",required:!0,type:"number",unit:"",sheet_unit:"",min:0,max:1e3},summary:{label:"In one sentence",required:!0,type:"text",shortest:0,longest:600},also_called:{label:"Also called",required:!0,type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:20},nominal_impedance_ohm:{label:"Nominal impedance",required:!0,group:"Electrical",type:"quantity",unit:"Ω",sheet_unit:"Ω",min:10,max:300},constant_impedance:{label:"Constant impedance",required:!0,group:"Electrical",type:"boolean"},inner_diameter_m:{label:"Inner diameter",required:!0,hint:"Of the inner conductor at the mating plane",group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:1e-5,max:.2},outer_diameter_m:{label:"Outer diameter",required:!0,hint:"Bore of the outer conductor at the mating plane",group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:1e-4,max:.5},dielectric:{label:"Dielectric",required:!0,group:"Size and metal",type:"label",unit:"",sheet_unit:"",choices:{air:"Air",ptfe:"PTFE",pe:"Polyethylene",phenolic:"Filled phenolic",polystyrene:"Polystyrene",ppo:"PPO"}},section_length_m:{label:"Length of the mated pair",required:!0,hint:"Plug and jack joined, from cable to cable",group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:1e-4,max:1},bead_length_m:{label:"Length of its beads",required:!0,hint:"Solid supports of both halves together",group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:1e-5,max:1},bead_material:{label:"Bead material",required:!0,group:"Size and metal",type:"label",unit:"",sheet_unit:"",choices:{air:"Air",ptfe:"PTFE",pe:"Polyethylene",phenolic:"Filled phenolic",polystyrene:"Polystyrene",ppo:"PPO"}},body_diameter_m:{label:"Body diameter",required:!0,group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:.001,max:1},body_length_m:{label:"Body length",required:!0,group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:.001,max:1},inner_plating:{label:"Plating inside",required:!0,hint:"Of the centre contact",group:"Size and metal",type:"label",unit:"",sheet_unit:"",choices:{silver:"Silver",gold:"Gold",copper:"Copper",brass:"Brass",nickel:"Nickel",white_bronze:"White bronze",stainless:"Stainless steel"}},outer_plating:{label:"Plating outside",required:!0,hint:"Of the body",group:"Size and metal",type:"label",unit:"",sheet_unit:"",choices:{silver:"Silver",gold:"Gold",copper:"Copper",brass:"Brass",nickel:"Nickel",white_bronze:"White bronze",stainless:"Stainless steel"}},rated_frequency_hz:{label:"Rated frequency",required:!0,group:"Electrical",type:"interval",unit:"Hz",sheet_unit:"MHz",min:1e6,max:2e11},vswr_limit:{label:"Vswr limit",required:!0,group:"Electrical",type:"part",of:"VswrLimit"},vswr_typical:{label:"Usual VSWR",required:!0,hint:"Of a good mated pair",group:"Electrical",type:"quantity",unit:"1",sheet_unit:"1",min:1.001,max:10},insertion_loss:{label:"Insertion loss",required:!0,group:"Electrical",type:"part",of:"InsertionLoss"},working_voltage_rms_v:{label:"Working voltage, rms",required:!0,group:"Electrical",type:"interval",unit:"V",sheet_unit:"V",min:1,max:1e5},proof_voltage_rms_v:{label:"Proof voltage, rms",required:!0,group:"Electrical",type:"interval",unit:"V",sheet_unit:"V",min:1,max:2e5},centre_contact_resistance_ohm:{label:"Centre contact resistance",required:!0,group:"Electrical",type:"interval",unit:"Ω",sheet_unit:"mΩ",min:1e-6,max:1},outer_contact_resistance_ohm:{label:"Outer contact resistance",required:!0,group:"Electrical",type:"interval",unit:"Ω",sheet_unit:"mΩ",min:1e-6,max:1},average_power:{label:"Power rating",required:!0,hint:"What is stated for it; held against what is computed",group:"Heat",type:"list",of:{type:"part",of:"PowerRating"},least:0,most:100},lowest_temperature_c:{label:"Lowest temperature",required:!0,group:"Heat",type:"quantity",unit:"°C",sheet_unit:"°C",min:-100,max:100},highest_temperature_c:{label:"Highest temperature",required:!0,group:"Heat",type:"quantity",unit:"°C",sheet_unit:"°C",min:20,max:500},durability_matings:{label:"Matings it stands",required:!0,group:"Wear and sealing",type:"interval",unit:"matings",sheet_unit:"matings",min:1,max:1e6},coupling:{label:"Coupling",required:!0,group:"Wear and sealing",type:"label",unit:"",sheet_unit:""},coupling_torque_nm:{label:"Coupling torque",required:!0,group:"Wear and sealing",type:"interval",unit:"N·m",sheet_unit:"N·m",min:0,max:500},sealing_mated:{label:"Sealing when mated",required:!0,hint:"None, or an IP code such as IP67",group:"Wear and sealing",type:"label",unit:"",sheet_unit:""},exposure_mated:{label:"Weather it stands when mated",required:!0,group:"Wear and sealing",type:"choice",choices:{exposed:"exposed",immersed:"immersed",indoor:"indoor",sheltered:"sheltered"}},vibration:{label:"Shaking it stands",required:!0,group:"Wear and sealing",type:"label",unit:"",sheet_unit:"",choices:{none:"none",vehicle:"vehicle",severe:"severe"}},cable_diameter_m:{label:"Cables it takes, diameter",required:!0,group:"What it mates with",type:"interval",unit:"m",sheet_unit:"mm",min:1e-4,max:.2},gender:{label:"Plug and jack",required:!0,hint:"How to tell one from the other",group:"What it mates with",type:"label",unit:"",sheet_unit:""},receive_only:{label:"Receive only",required:!0,group:"Electrical",type:"boolean"},receive_only_reason:{label:"Why it is for receiving only",required:!1,group:"Electrical",default:"",type:"text",shortest:0,longest:600},stainless_torque_nm:{label:"Coupling torque of stainless parts",required:!1,group:"Wear and sealing",default:null,type:"interval",unit:"N·m",sheet_unit:"N·m",min:0,max:500},tightened_by:{label:"Tightened by",required:!1,group:"Wear and sealing",default:null,type:"label",unit:"",sheet_unit:"",choices:{"torque wrench":"torque wrench","hand or torque wrench":"hand or torque wrench",hand:"hand"}},customary_cable:{label:"Customary cable",required:!1,hint:"Left out, the thickest of like impedance that it takes",group:"What it mates with",default:null,type:"label",unit:"",sheet_unit:"",table:"cables"},generous_dielectric:{label:"Dielectric of better parts",required:!1,group:"Size and metal",default:null,type:"label",unit:"",sheet_unit:"",choices:{air:"Air",ptfe:"PTFE",pe:"Polyethylene",phenolic:"Filled phenolic",polystyrene:"Polystyrene",ppo:"PPO"}},generous_bead_material:{label:"Bead material of better parts",required:!1,group:"Size and metal",default:null,type:"label",unit:"",sheet_unit:"",choices:{air:"Air",ptfe:"PTFE",pe:"Polyethylene",phenolic:"Filled phenolic",polystyrene:"Polystyrene",ppo:"PPO"}},section:{label:"As a section of line",required:!1,group:"Electrical",default:null,type:"part",of:"Section"},everyday_cable_diameter_m:{label:"Cables the trade puts it on, diameter",required:!1,group:"What it mates with",default:null,type:"interval",unit:"m",sheet_unit:"mm",min:1e-4,max:.2},everyday_lowest_frequency_hz:{label:"The trade fits it from",required:!1,group:"What it mates with",default:null,type:"quantity",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},everyday_highest_power_w:{label:"The trade fits it up to",required:!1,group:"What it mates with",default:null,type:"quantity",unit:"W",sheet_unit:"W",min:.001,max:1e6},special_use:{label:"What it is made for",required:!1,group:"What it mates with",default:null,type:"label",unit:"",sheet_unit:""},typed_as:{label:"Also typed as",required:!1,hint:"What people type for it beside its name",default:[],type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:30}},Mating:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},plug:{label:"Plug of",required:!0,type:"text",shortest:1,longest:40,table:"interfaces"},jack:{label:"Jack of",required:!0,type:"text",shortest:1,longest:40,table:"interfaces"},verdict:{label:"Verdict",required:!0,type:"choice",choices:{damages:"damages","does not fit":"does not fit",mates:"mates","mates with care":"mates with care","no contact":"no contact","not held":"not held"}},text:{label:"What comes of it",required:!0,type:"text",shortest:0,longest:600},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},either_way:{label:"The same for the other family's plug and jack",required:!1,default:!1,type:"boolean"}},Mode:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},name:{label:"Name",required:!0,type:"text",shortest:1,longest:80},duty_factor:{label:"Duty factor",required:!0,hint:"Mean over peak power while keyed",type:"quantity",unit:"1",sheet_unit:"1",min:.001,max:1},on_time_s:{label:"An over lasts",required:!1,default:null,type:"quantity",unit:"s",sheet_unit:"s",min:.01,max:86400},off_time_s:{label:"and the pause after it",required:!1,default:null,type:"quantity",unit:"s",sheet_unit:"s",min:.01,max:86400},note:{label:"Note",required:!1,default:"",type:"text",shortest:0,longest:600},typed_as:{label:"Also typed as",required:!1,hint:"What people type for it beside its name",default:[],type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:30}},Overrides:{interfaces:{label:"Interfaces",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100},cables:{label:"Cables",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100},wire_lines:{label:"Wire lines",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100},adapters:{label:"Adapters",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100},matings:{label:"Matings",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100},bands:{label:"Bands",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100},modes:{label:"Modes",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100}},Pack:{id:{label:"Id",required:!0,hint:"Short name; it stands before the ids of the pack's sources",type:"text",shortest:1,longest:40},name:{label:"Name of the pack",required:!0,hint:"Name shown beside everything that comes from the pack",type:"text",shortest:1,longest:80},version:{label:"Version or date",required:!0,type:"text",shortest:1,longest:40},sources:{label:"Sources",required:!0,hint:"Where the values come from",type:"list",of:{type:"part",of:"PackSource"},least:0,most:200},note:{label:"What the pack is for",required:!1,default:"",type:"text",shortest:0,longest:600},overrides:{label:"Overrides",required:!1,default:{interfaces:[],cables:[],wire_lines:[],adapters:[],matings:[],bands:[],modes:[]},type:"part",of:"Overrides"},interfaces:{label:"Connector",required:!1,hint:"Interface families",default:[],type:"list",of:{type:"part",of:"Interface"},least:0,most:60},cables:{label:"Cable",required:!1,hint:"Cables",default:[],type:"list",of:{type:"part",of:"Cable"},least:0,most:60},wire_lines:{label:"Two-wire line",required:!1,hint:"Two-wire lines",default:[],type:"list",of:{type:"part",of:"WireLine"},least:0,most:60},adapters:{label:"Adapters",required:!1,hint:"What the trade sells",default:[],type:"list",of:{type:"part",of:"Adapter"},least:0,most:60},matings:{label:"Meeting of two connectors",required:!1,hint:"What comes of two families meeting",default:[],type:"list",of:{type:"part",of:"Mating"},least:0,most:200},bands:{label:"Band",required:!1,hint:"Amateur bands",default:[],type:"list",of:{type:"part",of:"Band"},least:0,most:60},modes:{label:"Mode",required:!1,hint:"Emission modes",default:[],type:"list",of:{type:"part",of:"Mode"},least:0,most:60},default_powers_w:{label:"Default powers",required:!1,hint:"Power levels of a matrix that asks for none [W]",default:[],type:"list",of:{type:"number",unit:"W",sheet_unit:"W",min:0,max:1e5},least:0,most:24},house_limits:{label:"House limit",required:!1,hint:"Most power by the station's own rules",default:[],type:"list",of:{type:"part",of:"HouseLimit"},least:0,most:100}},PackSource:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},title:{label:"Title of the source",required:!0,type:"text",shortest:1,longest:300},seen:{label:"How it was seen",required:!0,type:"choice",choices:{"as quoted":"as quoted",computed:"computed","from memory":"from memory",read:"read"}},address:{label:"Web address",required:!1,default:"",type:"text",shortest:0,longest:300},body:{label:"By whom",required:!1,default:"",type:"text",shortest:0,longest:100},year:{label:"Year",required:!1,default:"",type:"text",shortest:0,longest:60},place:{label:"Page or table",required:!1,default:"",type:"text",shortest:0,longest:100}},PowerRating:{power_w:{label:"Power",required:!0,type:"number",unit:"W",sheet_unit:"W",min:.001,max:1e6},frequency_hz:{label:"Frequency",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},ambient_temperature_c:{label:"Air temperature",required:!0,type:"number",unit:"°C",sheet_unit:"°C",min:-100,max:600},contact_temperature_c:{label:"Hottest contact",required:!0,type:"number",unit:"°C",sheet_unit:"°C",min:-100,max:600},altitude_m:{label:"Altitude",required:!0,type:"number",unit:"m",sheet_unit:"m",min:0,max:3e4},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},note:{label:"Note",required:!1,default:"",type:"text",shortest:0,longest:600},cable:{label:"Cable",required:!1,default:null,type:"text",shortest:1,longest:100,table:"cables"}},Section:{impedance_ohm:{label:"Impedance",required:!0,type:"interval",unit:"Ω",sheet_unit:"Ω",min:5,max:500},electrical_length_m:{label:"Electrical length",required:!0,type:"interval",unit:"m",sheet_unit:"mm",min:1e-4,max:1}},VswrLimit:{at_dc:{label:"Greatest VSWR at DC",required:!0,type:"quantity",unit:"1",sheet_unit:"1",min:1,max:10},slope_per_hz:{label:"Growth of the greatest VSWR",required:!0,type:"quantity",unit:"1/Hz",sheet_unit:"1/GHz",min:0,max:1e-7}},WireLine:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},name:{label:"Name",required:!0,type:"text",shortest:1,longest:80},order:{label:"Place in lists",required:!0,type:"number",unit:"",sheet_unit:"",min:0,max:1e3},summary:{label:"In one sentence",required:!0,type:"text",shortest:0,longest:600},also_called:{label:"Also called",required:!0,type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:20},construction:{label:"Construction",required:!0,group:"Size and metal",type:"choice",choices:{"open wire":"open wire",ribbon:"ribbon",window:"window"}},outdoor_use:{label:"Weather it stands",required:!0,group:"Wear and sealing",type:"choice",choices:{exposed:"exposed",immersed:"immersed",indoor:"indoor",sheltered:"sheltered"}},impedance_ohm:{label:"Impedance",required:!0,group:"Electrical",type:"quantity",unit:"Ω",sheet_unit:"Ω",min:50,max:1e3},velocity_factor:{label:"Velocity factor",required:!0,group:"Electrical",type:"quantity",unit:"1",sheet_unit:"1",min:.2,max:1},wire:{label:"Wire",required:!0,group:"Size and metal",type:"label",unit:"",sheet_unit:""},wet:{label:"Wet",required:!0,hint:"What rain and ice do to it",group:"Wear and sealing",type:"label",unit:"",sheet_unit:""},attenuation_temperature_c:{label:"Attenuation holds at",required:!0,group:"Electrical",type:"quantity",unit:"°C",sheet_unit:"°C",min:-50,max:150},attenuation:{label:"Attenuation",required:!0,hint:"At two frequencies at least",group:"Electrical",type:"list",of:{type:"part",of:"Attenuation"},least:2,most:100},working_voltage_rms_v:{label:"Working voltage, rms",required:!0,group:"Electrical",type:"interval",unit:"V",sheet_unit:"V",min:1,max:1e5},lowest_temperature_c:{label:"Lowest temperature",required:!0,group:"Heat",type:"quantity",unit:"°C",sheet_unit:"°C",min:-100,max:100},highest_temperature_c:{label:"Highest temperature",required:!0,group:"Heat",type:"quantity",unit:"°C",sheet_unit:"°C",min:20,max:500},wire_diameter_m:{label:"Wire diameter",required:!1,group:"Size and metal",default:null,type:"quantity",unit:"m",sheet_unit:"mm",min:1e-5,max:.1},spacing_m:{label:"Spacing",required:!1,hint:"Between the wires' middles",group:"Size and metal",default:null,type:"quantity",unit:"m",sheet_unit:"mm",min:1e-4,max:2},fit_note:{label:"Note on the fit",required:!1,group:"Electrical",default:"",type:"text",shortest:0,longest:600}}},groups:["Size and metal","Electrical","Heat","Wear and sealing","What it mates with"],kinds:["standard","datasheet","handbook","common practice","memory"],most_bytes:1e6},question:{families:{uhf:"UHF (PL-259 / SO-239)",mini_uhf:"Mini-UHF",bnc:"BNC",bnc_75:"BNC 75 Ω",tnc:"TNC",n:"N",n_75:"N 75 Ω",c:"C",hn:"HN","7_16":"7/16","4_3_10":"4.3-10",sma:"SMA",rp_sma:"RP-SMA",smb:"SMB",mcx:"MCX",mmcx:"MMCX",f:"F","3_5mm":"3.5 mm","2_92mm":"2.92 mm"},modes:{ssb:"SSB",ssb_processed:"processed SSB",cw:"CW",cw_eme:"CW EME",fm:"FM",dmr:"DMR",am:"AM",rtty:"RTTY",psk31:"PSK31",ft8:"FT8",ft4:"FT4",jt65:"JT65",q65_60:"Q65-60",q65_300:"Q65-300",msk144:"MSK144",wspr:"WSPR",sstv:"SSTV",carrier:"key down"},names:["PL-259","SO-239","PL-259 / SO-239","UHF","Miniature UHF","mini UHF","BNC 50 Ω","50 ohm BNC","BNC","75 Ω BNC","BNC 75 Ω","Threaded BNC","TNC","Type N","N type","50 ohm N","N","75 Ω type N","75 ohm N","N 75 Ω","Type C","C type","C","High-voltage N","type HN","HN type","HN","7-16 DIN","DIN 7/16","716 DIN","DIN 716","7/16","4310","4.3-10 DIN","4.3-10","Subminiature A","SMA","Reverse polarity SMA","reverse SMA","SMA-RP","RP-SMA","Subminiature B","SMB","Micro coaxial","MCX","Micro-miniature coaxial","MMCX","F type","type F","TV connector","F","3.5 mm","2.92","2.92 mm","2200 m","630 m","160 m","top band","80 m","60 m","40 m","30 m","20 m","17 m","15 m","12 m","10 m","6 m","magic band","4 m","2 m","1.25 m","70 cm","33 cm","23 cm","13 cm","9 cm","5 cm","3 cm","1.2 cm","6 mm","SSB","USB","LSB","sideband","single sideband","phone","voice","SSB voice","SSB, conversation","processed SSB","compressed SSB","SSB with compression","SSB with processing","SSB with a processor","contest SSB","SSB, processed","CW","Morse","Morse code","telegraphy","CW, conversation","CW EME","EME CW","FM","NBFM","NFM","FM repeater","FM voice","DMR","DMR, one time slot","AM","AM voice (PEP is 4 × carrier)","RTTY","FSK","AFSK","teletype","RTTY, FSK or AFSK","PSK31","PSK","BPSK31","FT8","FT4","JT65","JT9","JT4","JT65, EME","Q65-60","Q65","Q65-60, EME","Q65-300","MSK144","MSK","WSPR","SSTV","slow scan","slow-scan TV","key down","carrier","continuous carrier","tune","tune up","tuning","tuning up","steady carrier","Carrier (tune-up)","RG-174","RG-174/U","M17/119","M17/173","RG-58","RG-58 C/U","M17/28","M17/155","Foam 4.95 mm, 200 size","0.195 in low-loss foam","200 size","size 200","200 type","5 mm foam","200 coax","RG-223","RG-223/U","M17/84","M17/167","RG-213","RG-213/U","RG-8 A/U","M17/74","M17/163","RG-8 foam","RG-8/U","RG-8 foam type","RG-8","RG-214","RG-214/U","M17/75","M17/164","RG-217","RG-217/U","M17/78","RG-8X","mini-8","RG-8 mini","mini RG-8","RG-8X mini","Foam 6.1 mm, 240 size","0.240 in low-loss foam","240 size","size 240","240 type","6 mm foam","240 coax","Foam 7.3 mm","European 7 mm low-loss foam","7 mm foam","7.3 mm foam","Foam 10.3 mm, 400 size","0.405 in low-loss foam","400 size","size 400","400 type","400 class","10.3 mm foam","0.405 in foam","400 coax","Foam 10.2 mm, stranded","European 10 mm low-loss foam","10 mm foam","10.2 mm foam","Foam 15 mm, 600 size","0.590 in low-loss foam","600 size","size 600","600 type","600 class","15 mm foam","600 coax","Corrugated foam 1/2 in","1/2 in foam hardline","1/2 in","1/2 inch",'1/2"',"half inch","half-inch hardline","1/2 in hardline","1/2 inch hardline","1/2 hardline","Corrugated foam 7/8 in","7/8 in foam hardline","7/8 in","7/8 inch",'7/8"',"seven-eighths","7/8 in hardline","7/8 inch hardline","7/8 hardline","RG-178","RG-178 B/U","M17/93","M17/169","RG-188","RG-188 A/U","M17/69","RG-316","RG-316/U","M17/113","M17/172","RG-303","RG-303/U","M17/111","RG-142","RG-142 B/U","M17/60","M17/158","RG-400","RG-400/U","M17/128","M17/175","RG-393","RG-393/U","M17/127","RG-405","RG-405/U","M17/133","0.085 in semi-rigid","0.085 semi-rigid","085 semi-rigid","0.085","RG-402","RG-402/U","M17/130","0.141 in semi-rigid","0.141 semi-rigid","141 semi-rigid","0.141","RG-59","RG-59 B/U","M17/29","RG-6","RG-6/U drop cable","RG-11","RG-11 A/U","M17/6","new","clean","like new","brand new","good condition","New and clean","worn","worn out","well worn","corroded","rusty","oxidised","oxidized","green","tarnished","mast","on a mast","up the mast","up a mast","on the mast","tower","on the tower","up the tower","on a tower","at the feed point","masthead","mobile","car","in the car","in a car","truck","van","vehicle","in a vehicle","boat","portable","field day","in the field","backpack","indoors","indoor","inside","in the shack","shack","in the house","under cover","dry","sheltered","under a roof","under the roof","under the eaves","porch","garage","attic","loft","outdoors","outdoor","outside","exposed","in the rain","rain","in the weather","in the snow","snow","wet","weather","immersed","under water","submerged","in water","flooded","sealed","taped","taped up","booted","weatherproofed","waterproofed","with tape","self-amalgamating tape","unsealed","untaped","not sealed","not taped","without tape","no tape","bare","vibration","vibrating","shaken","severe vibration","heavy vibration","shade","in the shade","shaded","no sun","receive","receiving","receive only","RX","RX only","listening","SWL","forward","forward power","net","net power","into the load","delivered"]},longest_s:xc,first_bands:["160m","80m","40m","30m","20m","17m","15m","12m","10m","6m","2m","70cm","23cm","13cm","5cm","3cm"],matrix:{families:[{id:"uhf",name:"UHF",summary:"Threaded 1930s interface without constant impedance",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 6.341 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Its impedance is known from the geometry, so the match is computed at any frequency.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 300 MHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Threaded coupling suits vibration: vehicle; asked: none.",wear:"Good for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 4.95 to 10.3 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"mini_uhf",name:"Mini-UHF",summary:"Small threaded interface of mobile radios, no constant impedance",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 15.62 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Its impedance is known from the geometry, so the match is computed at any frequency.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 2 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Threaded coupling suits vibration: vehicle; asked: none.",wear:"Good for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.49 to 6.2 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"bnc",name:"BNC",summary:"Quick bayonet interface for instruments and small cables",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 16.1 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 4 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 4 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Bayonet coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.49 to 6.2 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"bnc_75",name:"BNC 75 Ω",summary:"Bayonet interface of video and reception, 75 Ω",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 23.47 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 3 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 1 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Bayonet coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.5 to 7 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"tnc",name:"TNC",summary:"Threaded relative of BNC, steady under vibration and at microwaves",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 16.1 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 11 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 11 GHz.",weather:"Mated it stands: exposed; asked: indoor.",vibration:"Threaded coupling suits vibration: severe; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.49 to 10.3 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"n",name:"N",summary:"Threaded 7 mm interface, air dielectric at the mating plane",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 19.4 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 18 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 11 GHz.",weather:"Mated it stands: exposed; asked: indoor.",vibration:"Threaded coupling suits vibration: severe; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.49 to 28 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"n_75",name:"N 75 Ω",summary:"N interface with the thin 75 Ω centre contact",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 21.79 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 3 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 1.5 GHz.",weather:"Mated it stands: exposed; asked: indoor.",vibration:"Threaded coupling suits vibration: severe; asked: none.",wear:"Good for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 6.1 to 16.5 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"c",name:"C",summary:"Large bayonet interface of the power class between N and HN",receive_only:!1,gate_reasons:{te11:"By a guessed bore or filling its TE11 cutoff is 10.47 GHz; the published limit, higher, counts.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 11 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP54. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 10 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Bayonet coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 4.95 to 10.8 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"hn",name:"HN",summary:"High-voltage threaded interface, larger than N",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 9.516 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 6 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 4 GHz.",weather:"Mated it stands: exposed; asked: indoor.",vibration:"Threaded coupling suits vibration: severe; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 10.3 to 13.9 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"7_16",name:"7/16",summary:"Large threaded interface for high power and low intermodulation",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 8.466 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 7.5 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 6 GHz.",weather:"Mated it stands: exposed; asked: indoor.",vibration:"Threaded coupling suits vibration: severe; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 10.3 to 28 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"4_3_10",name:"4.3-10",summary:"Threaded 10 mm interface of mobile base stations: 7/16 class power in a smaller body, low intermodulation",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 13.57 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 12 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 6 GHz.",weather:"Mated it stands: exposed; asked: indoor.",vibration:"Threaded coupling suits vibration: vehicle; asked: none.",wear:"Good for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 6 to 16 mm; no cable given.",cold:"Rated down to -40 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"sma",name:"SMA",summary:"Threaded subminiature interface, solid PTFE to the mating plane",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 25.2 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 26.5 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 18 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Threaded coupling suits vibration: severe; asked: none.",wear:"Good for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.8 to 6.2 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"rp_sma",name:"RP-SMA",summary:"SMA with the centre contacts exchanged, common on wireless network gear; no standard of its own",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 25.2 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 18 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 6 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Threaded coupling suits vibration: vehicle; asked: none.",wear:"Good for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.1 to 6.2 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"smb",name:"SMB",summary:"Snap-on subminiature interface for the inside of equipment",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 34.89 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 10 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 4 GHz.",weather:"Mated it stands: indoor; asked: indoor.",vibration:"Snap coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.8 to 3 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"mcx",name:"MCX",summary:"Snap-on microminiature interface, about a third smaller than SMB",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 43.62 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 6 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 6 GHz.",weather:"Mated it stands: indoor; asked: indoor.",vibration:"Snap coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.8 to 3 mm; no cable given.",cold:"Rated down to -65 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"mmcx",name:"MMCX",summary:"Snap-on micro-miniature interface that turns freely when mated",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 65.42 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 6 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 6 GHz.",weather:"Mated it stands: indoor; asked: indoor.",vibration:"Snap coupling suits vibration: none; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.1 to 2.6 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"f",name:"F",summary:"Threaded 75 Ω interface of cable television and satellite reception; the cable conductor is the pin",receive_only:!0,gate_reasons:{te11:"Below its TE11 cutoff, 16.68 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 3 GHz.",receive_only:"The pin is the cable's own, often copper-clad steel, conductor in a spring clip; no standard gives it a voltage or power rating.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 1 GHz.",weather:"Mated it stands: sheltered; asked: indoor.",vibration:"Threaded coupling suits vibration: none; asked: none.",wear:"Good for 50 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 6.1 to 10.3 mm; no cable given.",cold:"Rated down to -40 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"3_5mm",name:"3.5 mm",summary:"Precision air-dielectric interface that mates with SMA",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 38.8 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 33 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 26.5 GHz.",weather:"Mated it stands: indoor; asked: indoor.",vibration:"Threaded coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.2 to 5.4 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"2_92mm",name:"2.92 mm",summary:"Precision air-dielectric interface to 40 GHz that mates with SMA and 3.5 mm",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 46.48 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 40 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Customarily used up to 40 GHz.",weather:"Mated it stands: indoor; asked: indoor.",vibration:"Threaded coupling suits vibration: vehicle; asked: none.",wear:"Good for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.2 to 3.6 mm; no cable given.",cold:"Rated down to -55 °C; the site: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""}],columns:[{id:"160m",name:"160 m",low_hz:181e4,high_hz:2e6,pack:""},{id:"80m",name:"80 m",low_hz:35e5,high_hz:38e5,pack:""},{id:"40m",name:"40 m",low_hz:7e6,high_hz:72e5,pack:""},{id:"30m",name:"30 m",low_hz:101e5,high_hz:1015e4,pack:""},{id:"20m",name:"20 m",low_hz:14e6,high_hz:1435e4,pack:""},{id:"17m",name:"17 m",low_hz:18068e3,high_hz:18168e3,pack:""},{id:"15m",name:"15 m",low_hz:21e6,high_hz:2145e4,pack:""},{id:"12m",name:"12 m",low_hz:2489e4,high_hz:2499e4,pack:""},{id:"10m",name:"10 m",low_hz:28e6,high_hz:297e5,pack:""},{id:"6m",name:"6 m",low_hz:5e7,high_hz:52e6,pack:""},{id:"2m",name:"2 m",low_hz:144e6,high_hz:146e6,pack:""},{id:"70cm",name:"70 cm",low_hz:43e7,high_hz:44e7,pack:""},{id:"23cm",name:"23 cm",low_hz:124e7,high_hz:13e8,pack:""},{id:"13cm",name:"13 cm",low_hz:23e8,high_hz:245e7,pack:""},{id:"5cm",name:"5 cm",low_hz:565e7,high_hz:585e7,pack:""},{id:"3cm",name:"3 cm",low_hz:1e10,high_hz:105e8,pack:""}],powers_w:[0,5,50,100,400,1500],limits:["cable","contact","voltage"],gates:[{id:"te11",name:"TE11 cutoff",hard:!0},{id:"cable_te11",name:"TE11 cutoff of the cable",hard:!0},{id:"no_figures",name:"Published figures",hard:!0},{id:"receive_only",name:"Receive only",hard:!0},{id:"no_heat_room",name:"Air temperature",hard:!0},{id:"immersion",name:"Immersion",hard:!0},{id:"match",name:"Match",hard:!0},{id:"customary_frequency",name:"Customary frequency",hard:!1},{id:"weather",name:"Weather",hard:!1},{id:"vibration",name:"Vibration",hard:!1},{id:"wear",name:"Wear",hard:!1},{id:"cable_fit",name:"Cable fit",hard:!1},{id:"cold",name:"Cold",hard:!1},{id:"match_doubt",name:"Match in doubt",hard:!1},{id:"house",name:"House limit",hard:!0}],margin_db:[[[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,22.242,12.242,9.23172,3.21112,-2.52919],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,20.2646,10.2646,7.25425,1.23365,-4.50666],[null,17.463,7.46298,4.45268,-1.56792,-7.30823],[null,14.4984,4.49844,1.48814,-4.53246,-10.2728],[null,12.6411,2.64107,-.369227,-6.38983,-12.1301],[null,9.92113,-.078869,-3.08917,-9.10977,-14.8501],[null,7.97843,-2.02157,-5.03187,-11.0525,-16.7928]],[[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.8013,14.8013,11.791,5.77045,.0301332],[null,24.4505,14.4505,11.4402,5.41962,-.320688],[null,24.0522,14.0522,11.0419,5.02133,-.718979],[null,22.746,12.746,9.73569,3.71509,-2.02523],[null,20.2646,10.2646,7.25425,1.23365,-4.50666],[null,17.463,7.46298,4.45268,-1.56792,-7.30823],[null,14.4984,4.49844,1.48814,-4.53246,-10.2728],[null,12.6411,2.64107,-.369227,-6.38983,-12.1301],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.8272,14.8272,11.8169,5.79635,.0560324],[null,24.4498,14.4498,11.4395,5.41886,-.321449],[null,23.2237,13.2237,10.2134,4.19275,-1.54756],[null,20.9547,10.9547,7.94441,1.92381,-3.8165],[null,18.51,8.51,5.4997,-.5209,-6.26121],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.8013,14.8013,11.791,5.77045,.0301332],[null,24.4505,14.4505,11.4402,5.41962,-.320688],[null,24.0522,14.0522,11.0419,5.02133,-.718979],[null,22.746,12.746,9.73569,3.71509,-2.02523],[null,20.2646,10.2646,7.25425,1.23365,-4.50666],[null,17.463,7.46298,4.45268,-1.56792,-7.30823],[null,14.4984,4.49844,1.48814,-4.53246,-10.2728],[null,12.6411,2.64107,-.369227,-6.38983,-12.1301],[null,9.92113,-.078869,-3.08917,-9.10977,-14.8501],[null,7.97843,-2.02157,-5.03187,-11.0525,-16.7928]],[[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,33.7009,23.7009,20.6906,14.67,8.92965],[null,32.9192,22.9192,19.9089,13.8883,8.14803],[null,32.3804,22.3804,19.3701,13.3495,7.6092],[null,31.9902,21.9902,18.9799,12.9593,7.21898],[null,31.6292,21.6292,18.6189,12.5983,6.85797],[null,31.2186,21.2186,18.2083,12.1877,6.44734],[null,29.8656,19.8656,16.8553,10.8347,5.09443],[null,27.2668,17.2668,14.2565,8.23591,2.4956],[null,24.2867,14.2867,11.2764,5.25584,-.484471],[null,21.0938,11.0938,8.08345,2.06285,-3.67746],[null,19.0848,9.08484,6.07454,.0539397,-5.68637],[null,16.1492,6.14925,3.13895,-2.88165,-8.62196],[null,14.0655,4.06554,1.05524,-4.96536,-10.7057]],[[null,31.5118,21.5118,18.5015,12.4809,6.74064],[null,31.5118,21.5118,18.5015,12.4809,6.74064],[null,30.6889,20.6889,17.6786,11.658,5.91768],[null,29.9403,19.9403,16.93,10.9094,5.16904],[null,29.1848,19.1848,16.1745,10.1539,4.41356],[null,28.6697,18.6697,15.6594,9.63879,3.89848],[null,28.3069,18.3069,15.2966,9.27602,3.53571],[null,27.9731,17.9731,14.9628,8.94216,3.20184],[null,27.5955,17.5955,14.5852,8.56455,2.82424],[null,26.3689,16.3689,13.3586,7.33796,1.59764],[null,24.0986,14.0986,11.0883,5.06768,-.672631],[null,21.6515,11.6515,8.64119,2.62059,-3.11972],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,33.7322,23.7322,20.7219,14.7013,8.96103],[null,32.9311,22.9311,19.9208,13.9002,8.15987],[null,32.3804,22.3804,19.3701,13.3495,7.60922],[null,31.9902,21.9902,18.9799,12.9593,7.21898],[null,31.6292,21.6292,18.6189,12.5983,6.85797],[null,31.2186,21.2186,18.2083,12.1877,6.44734],[null,29.8656,19.8656,16.8553,10.8347,5.09443],[null,27.2668,17.2668,14.2565,8.23591,2.4956],[null,24.2867,14.2867,11.2764,5.25584,-.484471],[null,21.0938,11.0938,8.08345,2.06285,-3.67746],[null,19.0848,9.08484,6.07454,.0539397,-5.68637],[null,16.1492,6.14925,3.13895,-2.88165,-8.62196],[null,14.0655,4.06554,1.05524,-4.96536,-10.7057]],[[null,37.4076,27.4076,24.3973,18.3767,12.6364],[null,35.9685,25.9685,22.9582,16.9376,11.1973],[null,34.5194,24.5194,21.5091,15.4885,9.74822],[null,33.7322,23.7322,20.7219,14.7013,8.96103],[null,32.9311,22.9311,19.9208,13.9002,8.15987],[null,32.3804,22.3804,19.3701,13.3495,7.60922],[null,31.9902,21.9902,18.9799,12.9593,7.21898],[null,31.6292,21.6292,18.6189,12.5983,6.85797],[null,31.2186,21.2186,18.2083,12.1877,6.44734],[null,29.8656,19.8656,16.8553,10.8347,5.09443],[null,27.2668,17.2668,14.2565,8.23591,2.4956],[null,24.2867,14.2867,11.2764,5.25584,-.484471],[null,21.0938,11.0938,8.08345,2.06285,-3.67746],[null,19.0848,9.08484,6.07454,.0539397,-5.68637],[null,16.1492,6.14925,3.13895,-2.88165,-8.62196],[null,null,null,null,null,null]],[[null,42.6379,32.6379,29.6276,23.607,17.8667],[null,42.6379,32.6379,29.6276,23.607,17.8667],[null,41.3912,31.3912,28.3809,22.3603,16.62],[null,40.6385,30.6385,27.6282,21.6076,15.8672],[null,39.8781,29.8781,26.8678,20.8472,15.1069],[null,39.3592,29.3592,26.3489,20.3283,14.588],[null,38.9935,28.9935,25.9832,19.9626,14.2222],[null,38.6566,28.6566,25.6463,19.6257,13.8854],[null,38.2754,28.2754,25.2651,19.2445,13.5042],[null,37.0348,27.0348,24.0245,18.0039,12.2636],[null,34.7262,24.7262,21.7159,15.6953,9.95498],[null,32.2113,22.2113,19.201,13.1804,7.44009],[null,29.6636,19.6636,16.6533,10.6327,4.8924],[null,28.1206,18.1206,15.1103,9.08966,3.34935],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,26.6145,16.6145,13.6042,7.58355,1.84324],[null,25.1203,15.1203,12.11,6.08939,.34908],[null,23.001,13.001,9.99073,3.97013,-1.77019],[null,null,null,null,null,null]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,23.1482,13.1482,10.1379,4.11731,-1.62301],[null,20.6681,10.6681,7.65777,1.63717,-4.10315],[null,18.1758,8.17577,5.16547,-.855134,-6.59545],[null,16.6787,6.67867,3.66838,-2.35222,-8.09254],[null,14.5556,4.55556,1.54526,-4.47534,-10.2157],[null,13.0721,3.07214,.0618433,-5.95876,-11.6991]],[[null,23.5607,13.5607,10.5504,4.52985,-1.21047],[null,22.6822,12.6822,9.67193,3.65133,-2.08898],[null,21.7951,11.7951,8.78483,2.76423,-2.97608],[null,21.3112,11.3112,8.30089,2.28029,-3.46002],[null,20.8163,10.8163,7.80601,1.78541,-3.9549],[null,20.4743,10.4743,7.46403,1.44343,-4.29688],[null,20.2309,10.2309,7.22056,1.19996,-4.54035],[null,20.0047,10.0047,6.99436,.973762,-4.76655],[null,19.7461,9.74608,6.73578,.715184,-5.02513],[null,18.8519,8.8519,5.8416,-.178995,-5.91931],[null,16.3754,6.37543,3.36513,-2.65547,-8.39578],[null,13.5817,3.58167,.571371,-5.44923,-11.1895],[null,10.6276,.62762,-2.38268,-8.40328,-14.1436],[null,8.77755,-1.22245,-4.23275,-10.2534,-15.9937],[null,6.06845,-3.93155,-6.94185,-12.9624,-18.7028],[null,4.13315,-5.86685,-8.87715,-14.8977,-20.6381]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,23.8517,13.8517,10.8414,4.82083,-.919485],[null,21.5641,11.5641,8.55376,2.53316,-3.20716],[null,19.086,9.08596,6.07566,.0550616,-5.68525],[null,16.597,6.59695,3.58665,-2.43395,-8.17426],[null,15.1026,5.10262,2.09232,-3.92828,-9.66859],[null,12.9846,2.98463,-.0256682,-6.04627,-11.7866],[null,null,null,null,null,null]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,23.8517,13.8517,10.8414,4.82083,-.919485],[null,21.5641,11.5641,8.55376,2.53316,-3.20716],[null,19.086,9.08596,6.07566,.0550616,-5.68525],[null,16.597,6.59695,3.58665,-2.43395,-8.17426],[null,15.1026,5.10262,2.09232,-3.92828,-9.66859],[null,12.9846,2.98463,-.0256682,-6.04627,-11.7866],[null,null,null,null,null,null]],[[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,16.2348,6.23483,3.22453,-2.79607,-8.53638],[null,14.7405,4.7405,1.7302,-4.2904,-10.0307],[null,12.6225,2.62251,-.38779,-6.40839,-12.1487],[null,null,null,null,null,null]],[[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,20.6616,10.6616,7.6513,1.6307,-4.10961],[null,18.1758,8.17577,5.16547,-.855134,-6.59545],[null,16.6787,6.67867,3.66838,-2.35222,-8.09254],[null,14.5556,4.55556,1.54526,-4.47534,-10.2157],[null,13.0721,3.07214,.0618433,-5.95876,-11.6991]],[[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.1587,8.15865,5.14835,-.872246,-6.61256],[null,16.6665,6.66654,3.65624,-2.36436,-8.10467],[null,14.5487,4.5487,1.5384,-4.4822,-10.2225],[null,13.0682,3.06819,.0578885,-5.96271,-11.703]]],margin_high_db:[[[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,25.6418,15.6418,12.6315,6.61086,.870552],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,22.266,12.266,9.25568,3.23508,-2.50523],[null,19.467,9.46704,6.45674,.436137,-5.30418],[null,16.506,6.50601,3.49571,-2.52489,-8.2652],[null,14.6511,4.65109,1.64079,-4.37981,-10.1201],[null,11.9348,1.93478,-1.07552,-7.09612,-12.8364],[null,9.99454,-.00545572,-3.01576,-9.03636,-14.7767]],[[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.7169,17.7169,14.7066,8.68599,2.94568],[null,27.1799,17.1799,14.1696,8.14899,2.40868],[null,26.8001,16.8001,13.7898,7.76925,2.02893],[null,26.4495,16.4495,13.4392,7.41857,1.67825],[null,26.0513,16.0513,13.041,7.02045,1.28013],[null,24.7457,14.7457,11.7354,5.71485,-.0254649],[null,22.266,12.266,9.25568,3.23508,-2.50523],[null,19.467,9.46704,6.45674,.436137,-5.30418],[null,16.506,6.50601,3.49571,-2.52489,-8.2652],[null,14.6511,4.65109,1.64079,-4.37981,-10.1201],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.4003,17.4003,14.39,8.36936,2.62905],[null,26.8854,16.8854,13.8751,7.85446,2.11414],[null,26.5227,16.5227,13.5124,7.49181,1.7515],[null,26.189,16.189,13.1787,7.15809,1.41777],[null,25.8115,15.8115,12.8012,6.78064,1.04033],[null,24.5856,14.5856,11.5753,5.55468,-.185633],[null,22.317,12.317,9.30674,3.28614,-2.45417],[null,19.8731,9.87306,6.86276,.842159,-4.89815],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.7169,17.7169,14.7066,8.68599,2.94568],[null,27.1799,17.1799,14.1696,8.14899,2.40868],[null,26.8001,16.8001,13.7898,7.76925,2.02893],[null,26.4495,16.4495,13.4392,7.41857,1.67825],[null,26.0513,16.0513,13.041,7.02045,1.28013],[null,24.7457,14.7457,11.7354,5.71485,-.0254649],[null,22.266,12.266,9.25568,3.23508,-2.50523],[null,19.467,9.46704,6.45674,.436137,-5.30418],[null,16.506,6.50601,3.49571,-2.52489,-8.2652],[null,14.6511,4.65109,1.64079,-4.37981,-10.1201],[null,11.9348,1.93478,-1.07552,-7.09612,-12.8364],[null,9.99454,-.00545572,-3.01576,-9.03636,-14.7767]],[[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,33.726,23.726,20.7157,14.6951,8.95476],[null,33.336,23.336,20.3257,14.3051,8.5648],[null,32.9753,22.9753,19.965,13.9444,8.20406],[null,32.565,22.565,19.5547,13.5341,7.79375],[null,31.2133,21.2133,18.203,12.1824,6.44205],[null,28.6174,18.6174,15.6071,9.58652,3.84621],[null,25.6418,15.6418,12.6315,6.61086,.870552],[null,22.4542,12.4542,9.44386,3.42326,-2.31705],[null,20.4487,10.4487,7.43838,1.41778,-4.32254],[null,17.5178,7.51776,4.50746,-1.51314,-7.25345],[null,15.437,5.43699,2.42669,-3.59391,-9.33422]],[[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,33.3508,23.3508,20.3405,14.3199,8.57961],[null,31.9588,21.9588,18.9485,12.9279,7.1876],[null,31.2102,21.2102,18.1999,12.1793,6.43901],[null,30.4548,20.4548,17.4445,11.4239,5.68359],[null,29.9398,19.9398,16.9295,10.9089,5.16856],[null,29.577,19.577,16.5667,10.5461,4.80582],[null,29.2432,19.2432,16.2329,10.2123,4.47199],[null,28.8656,18.8656,15.8553,9.83474,4.09443],[null,27.6392,17.6392,14.6289,8.60832,2.86801],[null,25.3694,15.3694,12.3591,6.33852,.598202],[null,22.9232,12.9232,9.91286,3.89226,-1.84805],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,37.5324,27.5324,24.5221,18.5015,12.7612],[null,37.3123,27.3123,24.302,18.2814,12.5411],[null,35.8638,25.8638,22.8535,16.8329,11.0926],[null,35.077,25.077,22.0667,16.0461,10.3058],[null,34.2763,24.2763,21.266,15.2454,9.50506],[null,33.726,23.726,20.7157,14.6951,8.95476],[null,33.336,23.336,20.3257,14.3051,8.5648],[null,32.9753,22.9753,19.965,13.9444,8.20406],[null,32.565,22.565,19.5547,13.5341,7.79375],[null,31.2133,21.2133,18.203,12.1824,6.44205],[null,28.6174,18.6174,15.6071,9.58652,3.84621],[null,25.6418,15.6418,12.6315,6.61086,.870552],[null,22.4542,12.4542,9.44386,3.42326,-2.31705],[null,20.4487,10.4487,7.43838,1.41778,-4.32254],[null,17.5178,7.51776,4.50746,-1.51314,-7.25345],[null,15.437,5.43699,2.42669,-3.59391,-9.33422]],[[null,38.7509,28.7509,25.7406,19.72,13.9797],[null,37.3123,27.3123,24.302,18.2814,12.5411],[null,35.8638,25.8638,22.8535,16.8329,11.0926],[null,35.077,25.077,22.0667,16.0461,10.3058],[null,34.2763,24.2763,21.266,15.2454,9.50506],[null,33.726,23.726,20.7157,14.6951,8.95476],[null,33.336,23.336,20.3257,14.3051,8.5648],[null,32.9753,22.9753,19.965,13.9444,8.20406],[null,32.565,22.565,19.5547,13.5341,7.79375],[null,31.2133,21.2133,18.203,12.1824,6.44205],[null,28.6174,18.6174,15.6071,9.58652,3.84621],[null,25.6418,15.6418,12.6315,6.61086,.870552],[null,22.4542,12.4542,9.44386,3.42326,-2.31705],[null,20.4487,10.4487,7.43838,1.41778,-4.32254],[null,17.5178,7.51776,4.50746,-1.51314,-7.25345],[null,null,null,null,null,null]],[[null,42.6379,32.6379,29.6276,23.607,17.8667],[null,42.6379,32.6379,29.6276,23.607,17.8667],[null,42.6379,32.6379,29.6276,23.607,17.8667],[null,42.6379,32.6379,29.6276,23.607,17.8667],[null,42.3269,32.3269,29.3166,23.296,17.5557],[null,41.8197,31.8197,28.8094,22.7888,17.0485],[null,41.4613,31.4613,28.451,22.4304,16.6901],[null,41.1307,31.1307,28.1204,22.0998,16.3594],[null,40.7557,30.7557,27.7454,21.7248,15.9845],[null,39.5311,29.5311,26.5208,20.5002,14.7599],[null,37.2375,27.2375,24.2272,18.2066,12.4663],[null,34.7214,24.7214,21.7111,15.6905,9.95018],[null,32.1564,22.1564,19.1461,13.1255,7.38518],[null,30.5954,20.5954,17.5851,11.5645,5.82416],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.5709,17.5709,14.5606,8.54003,2.79972],[null,26.0787,16.0787,13.0684,7.04784,1.30753],[null,23.9647,13.9647,10.9544,4.93382,-.806492],[null,null,null,null,null,null]],[[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,23.7416,13.7416,10.7313,4.71074,-1.02957],[null,21.2526,11.2526,8.24231,2.22171,-3.5186],[null,19.7583,9.75826,6.74796,.727365,-5.01295],[null,17.6402,7.64024,4.62994,-1.39066,-7.13097],[null,16.1612,6.16125,3.15095,-2.86965,-8.60997]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.253,14.253,11.2427,5.22211,-.518201],[null,23.3661,13.3661,10.3558,4.3352,-1.40511],[null,22.8823,12.8823,9.872,3.8514,-1.88892],[null,22.3876,12.3876,9.3773,3.3567,-2.38362],[null,22.0458,12.0458,9.03547,3.01487,-2.72545],[null,21.8024,11.8024,8.79211,2.77151,-2.9688],[null,21.5763,11.5763,8.56603,2.54543,-3.19488],[null,21.3179,11.3179,8.3076,2.287,-3.45331],[null,20.4243,10.4243,7.41401,1.39341,-4.3469],[null,17.949,7.94899,4.93869,-1.08191,-6.82222],[null,15.1571,5.15707,2.14677,-3.87383,-9.61415],[null,12.2055,2.20548,-.804817,-6.82542,-12.5657],[null,10.3571,.357128,-2.65317,-8.67377,-14.4141],[null,7.65059,-2.34941,-5.35971,-11.3803,-17.1206],[null,5.71705,-4.28295,-7.29325,-13.3139,-19.0542]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,23.2779,13.2779,10.2676,4.24701,-1.4933],[null,20.8008,10.8008,7.79054,1.76994,-3.97038],[null,18.3135,8.31348,5.30318,-.717424,-6.45774],[null,16.8205,6.82054,3.81024,-2.21036,-7.95068],[null,14.7051,4.70512,1.69482,-4.32578,-10.0661],[null,null,null,null,null,null]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,23.2779,13.2779,10.2676,4.24701,-1.4933],[null,20.8008,10.8008,7.79054,1.76994,-3.97038],[null,18.3135,8.31348,5.30318,-.717424,-6.45774],[null,16.8205,6.82054,3.81024,-2.21036,-7.95068],[null,14.7051,4.70512,1.69482,-4.32578,-10.0661],[null,null,null,null,null,null]],[[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,17.9514,7.95135,4.94105,-1.07955,-6.81986],[null,16.4584,6.45841,3.44812,-2.57248,-8.3128],[null,14.343,4.34299,1.33269,-4.68791,-10.4282],[null,null,null,null,null,null]],[[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,23.6571,13.6571,10.6468,4.6262,-1.11411],[null,21.1843,11.1843,8.17396,2.15336,-3.58696],[null,19.6961,9.69614,6.68584,.665236,-5.07508],[null,17.5842,7.58416,4.57386,-1.44674,-7.18705],[null,16.1081,6.10812,3.09782,-2.92278,-8.66309]],[[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.1522,11.1522,8.14188,2.12128,-3.61903],[null,19.6643,9.66427,6.65397,.633371,-5.10694],[null,17.5527,7.55269,4.54239,-1.47821,-7.21852],[null,16.077,6.07698,3.06668,-2.95392,-8.69423]]],binding:[[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1]]],refused_by:[[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[6,6,6,6,6,6],[6,6,6,6,6,6],[6,6,6,6,6,6],[0,0,0,0,0,0]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[2,2,2,2,2,2],[2,2,2,2,2,2]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[6,6,6,6,6,6],[6,6,6,6,6,6],[2,2,2,2,2,2],[2,2,2,2,2,2]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[6,6,6,6,6,6],[6,6,6,6,6,6],[2,2,2,2,2,2],[2,2,2,2,2,2]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[0,0,0,0,0,0]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[1,1,1,1,1,1],[0,0,0,0,0,0]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[1,1,1,1,1,1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[2,2,2,2,2,2]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[2,2,2,2,2,2]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[2,2,2,2,2,2]],[[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[6,3,3,3,3,3],[6,3,3,3,3,3],[2,2,2,2,2,2],[2,2,2,2,2,2]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]]],marks:[[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128],[8320,8320,8320,8320,8320,8320],[8320,8320,8320,8320,8320,8320]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[8192,8192,8192,8192,8192,8192],[0,0,0,0,0,0],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[8320,8320,8320,8320,8320,8320],[8320,8320,8320,8320,8320,8320]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[8320,8320,8320,8320,8320,8320]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]]],undecided:[[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!0,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!0,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!0,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]]],rating_below:[!1,!1,!1,!0,!1,!1,!0,!1,!1,!0,!0,!0,!1,!0,!0,!0,!0,!0,!0],contact_allowed_w:[[[11012.2,37403.6],[9423.87,26927.6],[7784.34,19290.7],[6911.99,16094.1],[6057.91,13384.4],[5498.09,11791.5],[5117.34,10778.8],[4778.08,9919.67],[4408.35,9025.39],[3320.97,6611.44],[1805.93,3636.74],[837.862,1832.93],[356.387,879.805],[208.21,554.418],[96.1117,282.323],[null,null]],[[5093.11,8150.12],[3708.02,5873.76],[2669.51,4228.97],[2234.55,3540.08],[1865.57,2955.69],[1648.52,2611.92],[1510.44,2393.23],[1393.23,2207.58],[1271.14,2014.21],[940.954,1491.23],[531.405,842.497],[278.784,442.256],[140.868,223.651],[91.8496,145.908],[49.1002,78.0634],[31.3915,49.9372]],[[5145.32,8150.12],[3708.02,5873.76],[2669.51,4228.97],[2234.55,3540.08],[1865.57,2955.69],[1648.52,2611.92],[1510.44,2393.23],[1393.23,2207.58],[1271.14,2014.21],[940.954,1491.23],[531.405,842.497],[278.784,442.256],[140.868,223.651],[91.8496,145.908],[null,null],[null,null]],[[3587.35,4908.09],[3061.15,4188.22],[2612.7,3574.72],[2389.81,3269.81],[2008.32,2747.87],[1783.77,2440.65],[1640.86,2245.13],[1519.48,2079.07],[1392.98,1906.01],[1050.35,1437.24],[622.932,852.46],[354.789,485.597],[202.538,277.288],[145.11,198.713],[null,null],[null,null]],[[5145.32,8150.12],[3708.02,5873.76],[2669.51,4228.97],[2234.55,3540.08],[1865.57,2955.69],[1648.52,2611.92],[1510.44,2393.23],[1393.23,2207.58],[1271.14,2014.21],[940.954,1491.23],[531.405,842.497],[278.784,442.256],[140.868,223.651],[91.8496,145.908],[49.1002,78.0634],[31.3915,49.9372]],[[26436.6,36474.8],[19286.6,26545.4],[13980.8,19210.5],[11723.5,16094.1],[9792.52,13384.4],[8649.91,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[127.504,174.851]],[[10776.8,14919],[8010.34,10815.6],[5859.48,7849.67],[4931.69,6606.82],[4144.26,5552.01],[3680.78,4931.14],[3385.8,4536],[3135.28,4200.4],[2874.19,3850.65],[2166.98,2903.3],[1284.78,1721.52],[731.339,980.136],[417.122,559.202],[298.619,400.444],[null,null],[null,null]],[[27313.6,37502.4],[19761.6,26927.6],[14155.1,19290.7],[11808.5,16094.1],[9819.25,13384.4],[8649.94,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[127.504,174.851]],[[27525,37502.4],[19761.6,26927.6],[14155.1,19290.7],[11808.5,16094.1],[9819.25,13384.4],[8649.94,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[null,null]],[[129650,221140],[95036.8,163128],[68879,119818],[57918.3,101314],[48616.1,85439.4],[43141,76022.4],[39656.6,70000.6],[36697.3,64868.7],[33613.4,59503.4],[25260.8,44882.7],[14845.3,26467.8],[8319.56,14828.9],[4627.34,8215.03],[3243.59,5734.66],[null,null],[null,null]],[[58534.6,76037.4],[43394.2,55805.5],[32006.1,40852.9],[27117.9,34503.1],[22913.8,29074.3],[20415.1,25830.7],[18815.4,23753.7],[17450.9,21989.7],[16023.2,20151.3],[12126.6,15171.9],[7196.04,8961.1],[4067.21,5066.52],[2293.06,2858.01],[1625.55,2026.96],[997.867,1245.78],[null,null]],[[8680.49,17125.8],[6430.27,12782],[4740.05,9475.89],[3993.65,8046.38],[3354.18,6800.56],[2977.8,6037.6],[2738.26,5552.04],[2534.81,5139.64],[2322.8,4709.87],[1748.53,3545.79],[1032.26,2093.85],[583.145,1183.41],[328.508,667.161],[232.722,472.93],[142.734,290.398],[101.434,206.583]],[[1135.13,1629.71],[927.242,1331.29],[755.933,1085.38],[676.221,970.956],[603.394,866.422],[557.703,800.842],[527.298,757.201],[500.537,718.792],[471.605,677.267],[383.849,551.316],[217.027,311.795],[114.061,163.937],[57.7739,83.0842],[37.7333,54.2854],[20.2216,29.1091],[12.9505,18.6498]],[[5954.35,9085.14],[4471.29,6738.01],[3294.5,4887.23],[2771.68,4111.7],[2327.95,3453.51],[2066.78,3066.1],[1900.56,2819.54],[1759.39,2610.14],[1612.27,2391.91],[1213.79,1800.82],[716.763,1063.56],[405.104,601.248],[228.384,339.092],[161.895,240.449],[99.4107,147.734],[null,null]],[[5640.85,8686.47],[4251.3,6515.18],[3175.48,4848.45],[2705.34,4111.7],[2296.9,3453.51],[2052.32,3066.1],[1895.01,2819.54],[1759.39,2610.14],[1612.27,2391.91],[1213.79,1800.82],[716.763,1063.56],[405.104,601.248],[228.384,339.092],[161.895,240.449],[99.4107,147.734],[null,null]],[[4868.93,7665.09],[3700.11,5750.74],[2781.75,4280.57],[2376.68,3641.35],[2022.89,3087.6],[1810.19,2756.71],[1673.06,2544.17],[1555.5,2362.46],[1431.9,2171.9],[1091.41,1649.56],[654.684,978.473],[372.695,553.148],[210.113,311.965],[148.943,221.213],[91.4579,135.916],[null,null]],[[1603.04,2481.15],[1434.96,2135.99],[1319.86,1940.13],[1258.53,1842.42],[1197.03,1748.71],[1155.4,1687.62],[1126.23,1645.9],[1099.51,1608.44],[1069.44,1567.11],[992.257,1485.79],[656.8,907.131],[400.247,522.541],[232.853,304.001],[169.618,221.444],[null,null],[null,null]],[[8292.18,16012.4],[6154.29,11985],[4543.28,8904.87],[3850.99,7569.05],[3255.21,6413.52],[2900.93,5723.78],[2674.06,5281.04],[2480.5,4902.69],[2277.94,4506.09],[1724.87,3419.94],[1025.86,2040.24],[582.278,1160.59],[328.508,656.743],[232.722,466.212],[142.734,286.673],[101.434,204.071]],[[8247.21,15891.2],[6121.13,11894.6],[4518.91,8837.83],[3830.38,7512.13],[3237.82,6365.34],[2885.46,5680.81],[2659.8,5241.42],[2467.29,4865.92],[2265.82,4472.31],[1715.71,3394.35],[1020.44,2025.02],[579.215,1151.98],[327.217,651.91],[232.073,462.804],[142.508,284.603],[101.342,202.613]]],cable_allowed_w:[[[27525,37502.4],[19761.6,26927.6],[14155.1,19290.7],[11808.5,16094.1],[9819.25,13384.4],[8649.94,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[null,null]],[[5145.32,8150.12],[3708.02,5873.76],[2669.51,4228.97],[2234.55,3540.08],[1865.57,2955.69],[1648.52,2611.92],[1510.44,2393.23],[1393.23,2207.58],[1271.14,2014.21],[940.954,1491.23],[531.405,842.497],[278.784,442.256],[140.868,223.651],[91.8496,145.908],[49.1002,78.0634],[31.3915,49.9372]],[[5145.32,8150.12],[3708.02,5873.76],[2669.51,4228.97],[2234.55,3540.08],[1865.57,2955.69],[1648.52,2611.92],[1510.44,2393.23],[1393.23,2207.58],[1271.14,2014.21],[940.954,1491.23],[531.405,842.497],[278.784,442.256],[140.868,223.651],[91.8496,145.908],[null,null],[null,null]],[[3587.35,4908.09],[3061.15,4188.22],[2612.7,3574.72],[2389.81,3269.81],[2008.32,2747.87],[1783.77,2440.65],[1640.86,2245.13],[1519.48,2079.07],[1392.98,1906.01],[1050.35,1437.24],[622.932,852.46],[354.789,485.597],[202.538,277.288],[145.11,198.713],[null,null],[null,null]],[[5145.32,8150.12],[3708.02,5873.76],[2669.51,4228.97],[2234.55,3540.08],[1865.57,2955.69],[1648.52,2611.92],[1510.44,2393.23],[1393.23,2207.58],[1271.14,2014.21],[940.954,1491.23],[531.405,842.497],[278.784,442.256],[140.868,223.651],[91.8496,145.908],[49.1002,78.0634],[31.3915,49.9372]],[[27525,37502.4],[19761.6,26927.6],[14155.1,19290.7],[11808.5,16094.1],[9819.25,13384.4],[8649.94,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[127.504,174.851]],[[11136.8,14919],[8073.61,10815.6],[5859.48,7849.67],[4931.69,6606.82],[4144.26,5552.01],[3680.78,4931.14],[3385.8,4536],[3135.28,4200.4],[2874.19,3850.65],[2166.98,2903.3],[1284.78,1721.52],[731.339,980.136],[417.122,559.202],[298.619,400.444],[null,null],[null,null]],[[27525,37502.4],[19761.6,26927.6],[14155.1,19290.7],[11808.5,16094.1],[9819.25,13384.4],[8649.94,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[127.504,174.851]],[[27525,37502.4],[19761.6,26927.6],[14155.1,19290.7],[11808.5,16094.1],[9819.25,13384.4],[8649.94,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[null,null]],[[131227,236566],[95036.8,171330],[68879,124178],[57918.3,104420],[48616.1,87652.4],[43141,77782.9],[39656.6,71501.9],[36697.3,66167.4],[33613.4,60608.2],[25260.8,45551.7],[14845.3,26776.3],[8319.56,15012.1],[4627.34,8355.22],[3243.59,5859.86],[null,null],[null,null]],[[83907.1,104444],[60800.8,75684.2],[44099.4,54896.1],[37101,46185.3],[31161.5,38792.4],[27665.5,34440.9],[25440.6,31671.6],[23551,29319.5],[21581.7,26868.4],[16247.7,20229.2],[9594.71,11948.1],[5422.94,6755.36],[3057.41,3810.67],[2167.39,2702.61],[1330.97,1661.04],[null,null]],[[9032.92,18311.7],[6545.23,13269],[4747.11,9624.11],[3993.65,8096.79],[3354.18,6800.56],[2977.8,6037.6],[2738.26,5552.04],[2534.81,5139.64],[2322.8,4709.87],[1748.53,3545.79],[1032.26,2093.85],[583.145,1183.41],[328.508,667.161],[232.722,472.93],[142.734,290.398],[101.434,206.583]],[[1135.13,1629.71],[927.242,1331.29],[755.933,1085.38],[676.221,970.956],[603.394,866.422],[557.703,800.842],[527.298,757.201],[500.537,718.792],[471.605,677.267],[383.849,551.316],[217.027,311.795],[114.061,163.937],[57.7739,83.0842],[37.7333,54.2854],[20.2216,29.1091],[12.9505,18.6498]],[[8023.57,11902.1],[5814.03,8624.65],[4216.97,6255.66],[3547.75,5262.98],[2979.78,4420.49],[2645.48,3924.61],[2432.72,3609.02],[2252.02,3340.98],[2063.71,3061.65],[1553.65,2305.05],[917.457,1361.35],[518.533,769.598],[292.331,434.038],[207.225,307.775],[127.246,189.1],[null,null]],[[8023.57,11902.1],[5814.03,8624.65],[4216.97,6255.66],[3547.75,5262.98],[2979.78,4420.49],[2645.48,3924.61],[2432.72,3609.02],[2252.02,3340.98],[2063.71,3061.65],[1553.65,2305.05],[917.457,1361.35],[518.533,769.598],[292.331,434.038],[207.225,307.775],[127.246,189.1],[null,null]],[[8023.57,11902.1],[5814.03,8624.65],[4216.97,6255.66],[3547.75,5262.98],[2979.78,4420.49],[2645.48,3924.61],[2432.72,3609.02],[2252.02,3340.98],[2063.71,3061.65],[1553.65,2305.05],[917.457,1361.35],[518.533,769.598],[292.331,434.038],[207.225,307.775],[127.246,189.1],[null,null]],[[1900.47,2481.15],[1636.09,2135.99],[1486.07,1940.13],[1411.22,1842.42],[1339.45,1748.71],[1292.65,1687.62],[1260.7,1645.9],[1232,1608.44],[1200.35,1567.11],[1138.06,1485.79],[694.829,907.131],[400.247,522.541],[232.853,304.001],[169.618,221.444],[null,null],[null,null]],[[9032.92,18311.7],[6545.23,13269],[4747.11,9624.11],[3993.65,8096.79],[3354.18,6800.56],[2977.8,6037.6],[2738.26,5552.04],[2534.81,5139.64],[2322.8,4709.87],[1748.53,3545.79],[1032.26,2093.85],[583.145,1183.41],[328.508,667.161],[232.722,472.93],[142.734,290.398],[101.434,206.583]],[[9032.92,18311.7],[6545.23,13269],[4747.11,9624.11],[3993.65,8096.79],[3354.18,6800.56],[2977.8,6037.6],[2738.26,5552.04],[2534.81,5139.64],[2322.8,4709.87],[1748.53,3545.79],[1032.26,2093.85],[583.145,1183.41],[328.508,667.161],[232.722,472.93],[142.734,290.398],[101.434,206.583]]],voltage_allowed_w:[[[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[null,null]],[[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93]],[[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[null,null],[null,null]],[[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[null,null],[null,null]],[[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55]],[[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2]],[[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[null,null],[null,null]],[[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9]],[[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[null,null]],[[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[null,null],[null,null]],[[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[null,null]],[[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19]],[[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93]],[[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[null,null]],[[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[null,null]],[[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[null,null]],[[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[null,null],[null,null]],[[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93]],[[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887]]],return_loss_db:[[[61.33,65.6688],[55.7549,60.0938],[50.204,54.5428],[47.2215,51.5602],[44.214,48.5526],[42.1652,46.5037],[40.7231,45.0614],[39.3967,43.7349],[37.8975,42.2354],[33.0368,37.3726],[24.1129,28.428],[14.9213,19.0514],[8.48852,11.336],[8.28024,10.1118],[8.28024,10.1118],[null,null]],[[73.6601,87.1073],[68.085,81.5323],[62.5341,75.9813],[59.5514,72.9986],[56.5437,69.9909],[54.4947,67.9419],[53.0523,66.4995],[51.7256,65.1727],[50.2259,63.673],[45.3616,58.8084],[36.4012,49.8448],[26.8802,40.2949],[17.9978,31.1652],[14.0066,26.4869],[13.1708,24.1807],[13.1708,24.1807]],[[74.0304,82.8473],[68.4553,77.2723],[62.9044,71.7213],[59.9218,68.7387],[56.9141,65.731],[54.8651,63.682],[53.4228,62.2397],[52.0962,60.9131],[50.5966,59.4135],[45.7333,54.5501],[36.7825,45.5986],[27.3506,36.1605],[19.2688,28.0408],[17.6921,26.4444],[null,null],[null,null]],[[61.406,62.9933],[55.831,57.4182],[50.2801,51.8673],[47.2975,48.8847],[44.2899,45.8771],[42.241,43.8282],[40.7988,42.386],[39.4723,41.0594],[37.9729,39.56],[33.1109,34.6975],[24.1738,25.756],[14.8623,16.406],[7.45327,8.79472],[6.18818,7.44326],[null,null],[null,null]],[[74.0304,81.3419],[68.4553,75.7669],[62.9044,70.2159],[59.9218,67.2333],[56.9141,64.2257],[54.8651,62.1767],[53.4228,60.7344],[52.0962,59.4077],[50.5966,57.9081],[45.7333,53.0447],[36.7825,44.0933],[27.3506,34.6556],[19.2688,26.5383],[17.6921,24.9431],[17.6921,24.9431],[17.6921,24.9431]],[[72.4468,79.7583],[66.8717,74.1833],[61.3208,68.6323],[58.3382,65.6497],[55.3306,62.6421],[53.2816,60.5932],[51.8394,59.1509],[50.5128,57.8243],[49.0133,56.3248],[44.1507,51.4621],[35.207,42.5175],[25.8413,33.1437],[18.3664,25.6261],[17.6921,24.9431],[17.6921,24.9431],[17.6921,24.9431]],[[59.8224,61.4097],[54.2474,55.8346],[48.6965,50.2837],[45.7139,47.3012],[42.7064,44.2936],[40.6576,42.2448],[39.2155,40.8026],[37.8891,39.4762],[36.3899,37.9769],[31.5292,33.1155],[22.6052,24.1852],[13.4084,14.9346],[6.71802,8.01257],[6.18818,7.44326],[null,null],[null,null]],[[70.7112,77.3743],[65.1361,71.7993],[59.5852,66.2484],[56.6026,63.2658],[53.595,60.2582],[51.5461,58.2092],[50.1039,56.767],[48.7773,55.4405],[47.2779,53.941],[42.4156,49.0786],[33.4755,40.1372],[24.1433,30.7933],[16.9645,23.5586],[16.54,23.1269],[16.54,23.1269],[16.54,23.1269]],[[70.3935,75.8817],[64.8185,70.3066],[59.2676,64.7557],[56.285,61.7731],[53.2775,58.7656],[51.2286,56.7168],[49.7865,55.2746],[48.46,53.9481],[46.9608,52.4488],[42.0995,47.5874],[33.1699,38.6565],[23.9356,29.4111],[17.7179,23.153],[17.6921,23.1269],[17.6921,23.1269],[null,null]],[[83.5537,92.4636],[77.9725,86.8823],[72.4101,81.3198],[69.4176,78.3271],[66.396,75.3053],[64.3344,73.2435],[62.8813,71.7902],[61.5431,70.4518],[60.0281,68.9366],[55.0937,64.001],[45.8703,54.7726],[35.8661,44.7521],[28.7283,37.566],[26.5275,35.3043],[null,null],[null,null]],[[85.4093,91.533],[79.8328,85.9564],[74.2791,80.4027],[71.2941,77.4177],[68.2831,74.4067],[66.2311,72.3546],[64.7863,70.9097],[63.4569,69.5803],[61.9537,68.0771],[57.0736,63.1968],[48.061,54.1832],[38.5282,44.6469],[31.0948,37.2026],[30.1378,36.2333],[28.17,34.2297],[null,null]],[[82.3708,90.7811],[76.7948,85.205],[71.242,79.6521],[68.2577,76.6678],[65.2478,73.6578],[63.1967,71.6066],[61.7525,70.1624],[60.4239,68.8337],[58.9217,67.3313],[54.0455,62.4546],[45.0361,53.443],[35.3733,43.7725],[26.1877,34.5597],[22.1577,30.4904],[20.4998,28.7483],[18.9321,27.0701]],[[82.3697,87.2158],[76.7927,81.6387],[71.2381,76.0839],[68.2522,73.098],[65.24,70.0857],[63.1868,68.0324],[61.741,66.5864],[60.4104,65.2557],[58.9057,63.7508],[54.0175,58.862],[44.9583,49.7997],[35.1458,39.9775],[25.571,30.3695],[21.1134,25.8636],[18.5788,23.2173],[16.3322,20.8279]],[[81.9871,88.6146],[76.4102,83.0376],[70.8558,77.4829],[67.8701,74.497],[64.8581,71.4847],[62.8051,69.4315],[61.3594,67.9855],[60.029,66.6549],[58.5244,65.15],[53.637,60.2611],[44.5777,51.1954],[34.731,41.3284],[24.7521,31.284],[18.9515,25.3811],[13.5253,19.6583],[null,null]],[[97.0092,102.905],[91.424,97.3196],[85.854,91.7493],[82.8548,88.7499],[79.8236,85.7184],[77.7533,83.6478],[76.2927,82.1869],[74.9463,80.8403],[73.4205,79.3141],[68.4337,74.3255],[58.9729,64.8572],[48.0257,53.887],[35.6935,41.4888],[27.7531,33.4615],[17.9496,23.3962],[null,null]],[[95.2348,101.053],[89.6523,95.4705],[84.0872,89.9051],[81.0924,86.91],[78.0674,83.8846],[76.0026,81.8195],[74.5467,80.3633],[73.2055,79.0217],[71.6864,77.5022],[66.7311,72.5447],[57.3944,63.1993],[46.7627,52.5405],[34.9665,40.6671],[27.2882,32.8885],[16.8538,22.1507],[null,null]],[[65.3914,65.4342],[59.815,59.858],[54.2616,54.3051],[51.2768,51.3207],[48.2662,48.3106],[46.2144,46.2594],[44.7697,44.8152],[43.4405,43.4865],[41.9376,41.9841],[37.0581,37.1077],[28.0405,28.1025],[18.4084,18.5067],[9.74317,9.91866],[6.85826,7.09739],[null,null],[null,null]],[[100.562,104.477],[94.9843,98.8987],[89.4275,93.3419],[86.4398,90.3541],[83.4249,87.3392],[81.3693,85.2836],[79.9213,83.8356],[78.5885,82.5028],[77.0807,80.995],[72.1784,76.0924],[63.0589,66.9724],[53.0552,56.9669],[42.8773,46.7836],[37.4223,41.3213],[33.4573,37.3353],[30.4379,34.2877]],[[94.0703,100.337],[88.4937,94.7599],[82.9398,89.206],[79.9547,86.2208],[76.9434,83.2095],[74.8911,81.1572],[73.4459,79.712],[72.1162,78.3822],[70.6125,76.8785],[65.7292,71.9949],[56.6877,62.9524],[46.9048,53.1664],[37.1859,43.438],[31.9383,38.1769],[28.3781,34.5794],[26.2402,32.3924]]],largest_power_w:[[1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,837.862,null,null,null,null],[786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,531.405,278.784,140.868,91.8496,49.1002,31.3915],[1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1510.44,1393.23,1271.14,940.954,531.405,278.784,140.868,91.8496,null,null],[1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1519.48,1392.98,1050.35,622.932,354.789,null,null,null,null],[1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1510.44,1393.23,1271.14,940.954,531.405,278.784,140.868,91.8496,49.1002,31.3915],[12590.2,12590.2,12590.2,11723.5,9792.52,8649.91,7906.6,7275.93,6619.5,4847.68,2664.72,1341.67,643.199,404.999,206.013,127.504],[7081.98,7081.98,5859.48,4931.69,4144.26,3680.78,3385.8,3135.28,2874.19,2166.98,1284.78,731.339,null,null,null,null],[12590.2,12590.2,12590.2,11808.5,9819.25,8649.94,7906.6,7275.93,6619.5,4847.68,2664.72,1341.67,643.199,404.999,206.013,127.504],[27525,19761.6,14155.1,11808.5,9819.25,8649.94,7906.6,7275.93,6619.5,4847.68,2664.72,1341.67,643.199,404.999,206.013,null],[91782.5,91782.5,68879,57918.3,48616.1,43141,39656.6,36697.3,33613.4,25260.8,14845.3,8319.56,4627.34,3243.59,null,null],[3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,2293.06,1625.55,997.867,null],[1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1032.26,583.145,328.508,232.722,142.734,101.434],[1135.13,927.242,755.933,676.221,603.394,557.703,527.298,500.537,471.605,383.849,217.027,114.061,57.7739,37.7333,20.2216,12.9505],[1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1213.79,716.763,405.104,228.384,161.895,99.4107,null],[1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1213.79,716.763,405.104,228.384,161.895,99.4107,null],[363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,210.113,148.943,91.4579,null],[null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null],[786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,582.278,328.508,232.722,142.734,101.434],[363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,327.217,232.073,142.508,101.342]]}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var ot=class extends Event{constructor(e,t,n,i){super("context-request",{bubbles:!0,composed:!0}),this.context=e,this.contextTarget=t,this.callback=n,this.subscribe=i??!1}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 *//**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var xe=class{constructor(e,t,n,i){if(this.subscribe=!1,this.provided=!1,this.value=void 0,this.t=(r,a)=>{this.unsubscribe&&(this.unsubscribe!==a&&(this.provided=!1,this.unsubscribe()),this.subscribe||this.unsubscribe()),this.value=r,this.host.requestUpdate(),this.provided&&!this.subscribe||(this.provided=!0,this.callback&&this.callback(r,a)),this.unsubscribe=a},this.host=e,t.context!==void 0){let r=t;this.context=r.context,this.callback=r.callback,this.subscribe=r.subscribe??!1}else this.context=t,this.callback=n,this.subscribe=i??!1;this.host.addController(this)}hostConnected(){this.dispatchRequest()}hostDisconnected(){this.unsubscribe&&(this.unsubscribe(),this.unsubscribe=void 0)}dispatchRequest(){this.host.dispatchEvent(new ot(this.context,this.host,this.t,this.subscribe))}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var Vn=class{get value(){return this.o}set value(e){this.setValue(e)}setValue(e,t=!1){let n=t||!Object.is(e,this.o);this.o=e,n&&this.updateObservers()}constructor(e){this.subscriptions=new Map,this.updateObservers=()=>{for(let[t,{disposer:n}]of this.subscriptions)t(this.o,n)},e!==void 0&&(this.value=e)}addCallback(e,t,n){if(!n)return void e(this.value);this.subscriptions.has(e)||this.subscriptions.set(e,{disposer:()=>{this.subscriptions.delete(e)},consumerHost:t});let{disposer:i}=this.subscriptions.get(e);e(this.value,i)}clearCallbacks(){this.subscriptions.clear()}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var ta=class extends Event{constructor(e,t){super("context-provider",{bubbles:!0,composed:!0}),this.context=e,this.contextTarget=t}},Ot=class extends Vn{constructor(e,t,n){super(t.context!==void 0?t.initialValue:n),this.onContextRequest=i=>{if(i.context!==this.context)return;let r=i.contextTarget??i.composedPath()[0];r!==this.host&&(i.stopPropagation(),this.addCallback(i.callback,r,i.subscribe))},this.onProviderRequest=i=>{if(i.context!==this.context||(i.contextTarget??i.composedPath()[0])===this.host)return;let r=new Set;for(let[a,{consumerHost:l}]of this.subscriptions)r.has(a)||(r.add(a),l.dispatchEvent(new ot(this.context,l,a,!0)));i.stopPropagation()},this.host=e,t.context!==void 0?this.context=t.context:this.context=t,this.attachListeners(),this.host.addController?.(this)}attachListeners(){this.host.addEventListener("context-request",this.onContextRequest),this.host.addEventListener("context-provider",this.onProviderRequest)}hostConnected(){this.host.dispatchEvent(new ta(this.context,this.host))}};/**
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
 */var Yn=globalThis,Xn=Yn.ShadowRoot&&(Yn.ShadyCSS===void 0||Yn.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,sa=Symbol(),vc=new WeakMap,Hs=class{constructor(e,t,n){if(this._$cssResult$=!0,n!==sa)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=t}get styleSheet(){let e=this.o,t=this.t;if(Xn&&e===void 0){let n=t!==void 0&&t.length===1;n&&(e=vc.get(t)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),n&&vc.set(t,e))}return e}toString(){return this.cssText}},M=s=>new Hs(typeof s=="string"?s:s+"",void 0,sa),g=(s,...e)=>{let t=s.length===1?s[0]:e.reduce((n,i,r)=>n+(a=>{if(a._$cssResult$===!0)return a.cssText;if(typeof a=="number")return a;throw Error("Value passed to 'css' function must be a 'css' function result: "+a+". Use 'unsafeCSS' to pass non-literal values, but take care to ensure page security.")})(i)+s[r+1],s[0]);return new Hs(t,s,sa)},kc=(s,e)=>{if(Xn)s.adoptedStyleSheets=e.map(t=>t instanceof CSSStyleSheet?t:t.styleSheet);else for(let t of e){let n=document.createElement("style"),i=Yn.litNonce;i!==void 0&&n.setAttribute("nonce",i),n.textContent=t.cssText,s.appendChild(n)}},na=Xn?s=>s:s=>s instanceof CSSStyleSheet?(e=>{let t="";for(let n of e.cssRules)t+=n.cssText;return M(t)})(s):s;/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var{is:P2,defineProperty:W2,getOwnPropertyDescriptor:I2,getOwnPropertyNames:B2,getOwnPropertySymbols:H2,getPrototypeOf:F2}=Object,Jn=globalThis,Sc=Jn.trustedTypes,U2=Sc?Sc.emptyScript:"",D2=Jn.reactiveElementPolyfillSupport,Fs=(s,e)=>s,ia={toAttribute(s,e){switch(e){case Boolean:s=s?U2:null;break;case Object:case Array:s=s==null?s:JSON.stringify(s)}return s},fromAttribute(s,e){let t=s;switch(e){case Boolean:t=s!==null;break;case Number:t=s===null?null:Number(s);break;case Object:case Array:try{t=JSON.parse(s)}catch{t=null}}return t}},Ec=(s,e)=>!P2(s,e),jc={attribute:!0,type:String,converter:ia,reflect:!1,useDefault:!1,hasChanged:Ec};Symbol.metadata??=Symbol("metadata"),Jn.litPropertyMetadata??=new WeakMap;var Ge=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,t=jc){if(t.state&&(t.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((t=Object.create(t)).wrapped=!0),this.elementProperties.set(e,t),!t.noAccessor){let n=Symbol(),i=this.getPropertyDescriptor(e,n,t);i!==void 0&&W2(this.prototype,e,i)}}static getPropertyDescriptor(e,t,n){let{get:i,set:r}=I2(this.prototype,e)??{get(){return this[t]},set(a){this[t]=a}};return{get:i,set(a){let l=i?.call(this);r?.call(this,a),this.requestUpdate(e,l,n)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??jc}static _$Ei(){if(this.hasOwnProperty(Fs("elementProperties")))return;let e=F2(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(Fs("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Fs("properties"))){let t=this.properties,n=[...B2(t),...H2(t)];for(let i of n)this.createProperty(i,t[i])}let e=this[Symbol.metadata];if(e!==null){let t=litPropertyMetadata.get(e);if(t!==void 0)for(let[n,i]of t)this.elementProperties.set(n,i)}this._$Eh=new Map;for(let[t,n]of this.elementProperties){let i=this._$Eu(t,n);i!==void 0&&this._$Eh.set(i,t)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let t=[];if(Array.isArray(e)){let n=new Set(e.flat(1/0).reverse());for(let i of n)t.unshift(na(i))}else e!==void 0&&t.push(na(e));return t}static _$Eu(e,t){let n=t.attribute;return n===!1?void 0:typeof n=="string"?n:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,t=this.constructor.elementProperties;for(let n of t.keys())this.hasOwnProperty(n)&&(e.set(n,this[n]),delete this[n]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return kc(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,t,n){this._$AK(e,n)}_$ET(e,t){let n=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,n);if(i!==void 0&&n.reflect===!0){let r=(n.converter?.toAttribute!==void 0?n.converter:ia).toAttribute(t,n.type);this._$Em=e,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(e,t){let n=this.constructor,i=n._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let r=n.getPropertyOptions(i),a=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:ia;this._$Em=i;let l=a.fromAttribute(t,r.type);this[i]=l??this._$Ej?.get(i)??l,this._$Em=null}}requestUpdate(e,t,n,i=!1,r){if(e!==void 0){let a=this.constructor;if(i===!1&&(r=this[e]),n??=a.getPropertyOptions(e),!((n.hasChanged??Ec)(r,t)||n.useDefault&&n.reflect&&r===this._$Ej?.get(e)&&!this.hasAttribute(a._$Eu(e,n))))return;this.C(e,t,n)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,t,{useDefault:n,reflect:i,wrapped:r},a){n&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,a??t??this[e]),r!==!0||a!==void 0)||(this._$AL.has(e)||(this.hasUpdated||n||(t=void 0),this._$AL.set(e,t)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(t){Promise.reject(t)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let n=this.constructor.elementProperties;if(n.size>0)for(let[i,r]of n){let{wrapped:a}=r,l=this[i];a!==!0||this._$AL.has(i)||l===void 0||this.C(i,void 0,r,l)}}let e=!1,t=this._$AL;try{e=this.shouldUpdate(t),e?(this.willUpdate(t),this._$EO?.forEach(n=>n.hostUpdate?.()),this.update(t)):this._$EM()}catch(n){throw e=!1,this._$EM(),n}e&&this._$AE(t)}willUpdate(e){}_$AE(e){this._$EO?.forEach(t=>t.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(t=>this._$ET(t,this[t])),this._$EM()}updated(e){}firstUpdated(e){}};Ge.elementStyles=[],Ge.shadowRootOptions={mode:"open"},Ge[Fs("elementProperties")]=new Map,Ge[Fs("finalized")]=new Map,D2?.({ReactiveElement:Ge}),(Jn.reactiveElementVersions??=[]).push("2.1.2");/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var aa=globalThis,Oc=s=>s,Zn=aa.trustedTypes,Tc=Zn?Zn.createPolicy("lit-html",{createHTML:s=>s}):void 0,oa="$lit$",Ke=`lit$${Math.random().toFixed(9).slice(2)}$`,la="?"+Ke,G2=`<${la}>`,qt=document,Ds=()=>qt.createComment(""),Gs=s=>s===null||typeof s!="object"&&typeof s!="function",da=Array.isArray,zc=s=>da(s)||typeof s?.[Symbol.iterator]=="function",ra=`[ 	
\f\r]`,Us=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Ac=/-->/g,qc=/>/g,Tt=RegExp(`>|${ra}(?:([^\\s"'>=/]+)(${ra}*=${ra}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Mc=/'/g,Cc=/"/g,Nc=/^(?:script|style|textarea|title)$/i,ca=s=>(e,...t)=>({_$litType$:s,strings:e,values:t}),o=ca(1),G=ca(2),t9=ca(3),Ve=Symbol.for("lit-noChange"),h=Symbol.for("lit-nothing"),Rc=new WeakMap,At=qt.createTreeWalker(qt,129);function Lc(s,e){if(!da(s)||!s.hasOwnProperty("raw"))throw Error("invalid template strings array");return Tc!==void 0?Tc.createHTML(e):e}var Pc=(s,e)=>{let t=s.length-1,n=[],i,r=e===2?"<svg>":e===3?"<math>":"",a=Us;for(let l=0;l<t;l++){let d=s[l],u,p,f=-1,y=0;for(;y<d.length&&(a.lastIndex=y,p=a.exec(d),p!==null);)y=a.lastIndex,a===Us?p[1]==="!--"?a=Ac:p[1]!==void 0?a=qc:p[2]!==void 0?(Nc.test(p[2])&&(i=RegExp("</"+p[2],"g")),a=Tt):p[3]!==void 0&&(a=Tt):a===Tt?p[0]===">"?(a=i??Us,f=-1):p[1]===void 0?f=-2:(f=a.lastIndex-p[2].length,u=p[1],a=p[3]===void 0?Tt:p[3]==='"'?Cc:Mc):a===Cc||a===Mc?a=Tt:a===Ac||a===qc?a=Us:(a=Tt,i=void 0);let w=a===Tt&&s[l+1].startsWith("/>")?" ":"";r+=a===Us?d+G2:f>=0?(n.push(u),d.slice(0,f)+oa+d.slice(f)+Ke+w):d+Ke+(f===-2?l:w)}return[Lc(s,r+(s[t]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),n]},Ks=class s{constructor({strings:e,_$litType$:t},n){let i;this.parts=[];let r=0,a=0,l=e.length-1,d=this.parts,[u,p]=Pc(e,t);if(this.el=s.createElement(u,n),At.currentNode=this.el.content,t===2||t===3){let f=this.el.content.firstChild;f.replaceWith(...f.childNodes)}for(;(i=At.nextNode())!==null&&d.length<l;){if(i.nodeType===1){if(i.hasAttributes())for(let f of i.getAttributeNames())if(f.endsWith(oa)){let y=p[a++],w=i.getAttribute(f).split(Ke),v=/([.?@])?(.*)/.exec(y);d.push({type:1,index:r,name:v[2],strings:w,ctor:v[1]==="."?ei:v[1]==="?"?ti:v[1]==="@"?si:Ct}),i.removeAttribute(f)}else f.startsWith(Ke)&&(d.push({type:6,index:r}),i.removeAttribute(f));if(Nc.test(i.tagName)){let f=i.textContent.split(Ke),y=f.length-1;if(y>0){i.textContent=Zn?Zn.emptyScript:"";for(let w=0;w<y;w++)i.append(f[w],Ds()),At.nextNode(),d.push({type:2,index:++r});i.append(f[y],Ds())}}}else if(i.nodeType===8)if(i.data===la)d.push({type:2,index:r});else{let f=-1;for(;(f=i.data.indexOf(Ke,f+1))!==-1;)d.push({type:7,index:r}),f+=Ke.length-1}r++}}static createElement(e,t){let n=qt.createElement("template");return n.innerHTML=e,n}};function Mt(s,e,t=s,n){if(e===Ve)return e;let i=n!==void 0?t._$Co?.[n]:t._$Cl,r=Gs(e)?void 0:e._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(s),i._$AT(s,t,n)),n!==void 0?(t._$Co??=[])[n]=i:t._$Cl=i),i!==void 0&&(e=Mt(s,i._$AS(s,e.values),i,n)),e}var Qn=class{constructor(e,t){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=t}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:t},parts:n}=this._$AD,i=(e?.creationScope??qt).importNode(t,!0);At.currentNode=i;let r=At.nextNode(),a=0,l=0,d=n[0];for(;d!==void 0;){if(a===d.index){let u;d.type===2?u=new os(r,r.nextSibling,this,e):d.type===1?u=new d.ctor(r,d.name,d.strings,this,e):d.type===6&&(u=new ni(r,this,e)),this._$AV.push(u),d=n[++l]}a!==d?.index&&(r=At.nextNode(),a++)}return At.currentNode=qt,i}p(e){let t=0;for(let n of this._$AV)n!==void 0&&(n.strings!==void 0?(n._$AI(e,n,t),t+=n.strings.length-2):n._$AI(e[t])),t++}},os=class s{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,t,n,i){this.type=2,this._$AH=h,this._$AN=void 0,this._$AA=e,this._$AB=t,this._$AM=n,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,t=this._$AM;return t!==void 0&&e?.nodeType===11&&(e=t.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,t=this){e=Mt(this,e,t),Gs(e)?e===h||e==null||e===""?(this._$AH!==h&&this._$AR(),this._$AH=h):e!==this._$AH&&e!==Ve&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):zc(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==h&&Gs(this._$AH)?this._$AA.nextSibling.data=e:this.T(qt.createTextNode(e)),this._$AH=e}$(e){let{values:t,_$litType$:n}=e,i=typeof n=="number"?this._$AC(e):(n.el===void 0&&(n.el=Ks.createElement(Lc(n.h,n.h[0]),this.options)),n);if(this._$AH?._$AD===i)this._$AH.p(t);else{let r=new Qn(i,this),a=r.u(this.options);r.p(t),this.T(a),this._$AH=r}}_$AC(e){let t=Rc.get(e.strings);return t===void 0&&Rc.set(e.strings,t=new Ks(e)),t}k(e){da(this._$AH)||(this._$AH=[],this._$AR());let t=this._$AH,n,i=0;for(let r of e)i===t.length?t.push(n=new s(this.O(Ds()),this.O(Ds()),this,this.options)):n=t[i],n._$AI(r),i++;i<t.length&&(this._$AR(n&&n._$AB.nextSibling,i),t.length=i)}_$AR(e=this._$AA.nextSibling,t){for(this._$AP?.(!1,!0,t);e!==this._$AB;){let n=Oc(e).nextSibling;Oc(e).remove(),e=n}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},Ct=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,t,n,i,r){this.type=1,this._$AH=h,this._$AN=void 0,this.element=e,this.name=t,this._$AM=i,this.options=r,n.length>2||n[0]!==""||n[1]!==""?(this._$AH=Array(n.length-1).fill(new String),this.strings=n):this._$AH=h}_$AI(e,t=this,n,i){let r=this.strings,a=!1;if(r===void 0)e=Mt(this,e,t,0),a=!Gs(e)||e!==this._$AH&&e!==Ve,a&&(this._$AH=e);else{let l=e,d,u;for(e=r[0],d=0;d<r.length-1;d++)u=Mt(this,l[n+d],t,d),u===Ve&&(u=this._$AH[d]),a||=!Gs(u)||u!==this._$AH[d],u===h?e=h:e!==h&&(e+=(u??"")+r[d+1]),this._$AH[d]=u}a&&!i&&this.j(e)}j(e){e===h?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},ei=class extends Ct{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===h?void 0:e}},ti=class extends Ct{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==h)}},si=class extends Ct{constructor(e,t,n,i,r){super(e,t,n,i,r),this.type=5}_$AI(e,t=this){if((e=Mt(this,e,t,0)??h)===Ve)return;let n=this._$AH,i=e===h&&n!==h||e.capture!==n.capture||e.once!==n.once||e.passive!==n.passive,r=e!==h&&(n===h||i);i&&this.element.removeEventListener(this.name,this,n),r&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},ni=class{constructor(e,t,n){this.element=e,this.type=6,this._$AN=void 0,this._$AM=t,this.options=n}get _$AU(){return this._$AM._$AU}_$AI(e){Mt(this,e)}},Wc={M:oa,P:Ke,A:la,C:1,L:Pc,R:Qn,D:zc,V:Mt,I:os,H:Ct,N:ti,U:si,B:ei,F:ni},K2=aa.litHtmlPolyfillSupport;K2?.(Ks,os),(aa.litHtmlVersions??=[]).push("3.3.3");var lt=(s,e,t)=>{let n=t?.renderBefore??e,i=n._$litPart$;if(i===void 0){let r=t?.renderBefore??null;n._$litPart$=i=new os(e.insertBefore(Ds(),r),r,void 0,t??{})}return i._$AI(s),i};/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var ua=globalThis,Ce=class extends Ge{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let t=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=lt(t,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Ve}};Ce._$litElement$=!0,Ce.finalized=!0,ua.litElementHydrateSupport?.({LitElement:Ce});var V2=ua.litElementPolyfillSupport;V2?.({LitElement:Ce});(ua.litElementVersions??=[]).push("4.2.2");/**
 * @license
 * Copyright 2022 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 *//**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var Ic={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},ls=s=>(...e)=>({_$litDirective$:s,values:e}),dt=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,t,n){this._$Ct=e,this._$AM=t,this._$Ci=n}_$AS(e,t){return this.update(e,t)}update(e,t){return this.render(...t)}};/**
 * @license
 * Copyright 2020 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var{I:Y2}=Wc,Bc=s=>s;var ha=(s,e)=>e===void 0?s?._$litType$!==void 0:s?._$litType$===e,Fc=s=>s?._$litType$?.h!=null;var Hc=()=>document.createComment(""),Ye=(s,e,t)=>{let n=s._$AA.parentNode,i=e===void 0?s._$AB:e._$AA;if(t===void 0){let r=n.insertBefore(Hc(),i),a=n.insertBefore(Hc(),i);t=new Y2(r,a,s,s.options)}else{let r=t._$AB.nextSibling,a=t._$AM,l=a!==s;if(l){let d;t._$AQ?.(s),t._$AM=s,t._$AP!==void 0&&(d=s._$AU)!==a._$AU&&t._$AP(d)}if(r!==i||l){let d=t._$AA;for(;d!==r;){let u=Bc(d).nextSibling;Bc(n).insertBefore(d,i),d=u}}}return t},ct=(s,e,t=s)=>(s._$AI(e,t),s),X2={},Rt=(s,e=X2)=>s._$AH=e,Vs=s=>s._$AH,ii=s=>{s._$AR(),s._$AA.remove()},Uc=s=>{s._$AR()};/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var Dc=s=>Fc(s)?s._$litType$.h:s.strings,ma=ls(class extends dt{constructor(s){super(s),this.et=new WeakMap}render(s){return[s]}update(s,[e]){let t=ha(this.it)?Dc(this.it):null,n=ha(e)?Dc(e):null;if(t!==null&&(n===null||t!==n)){let i=Vs(s).pop(),r=this.et.get(t);if(r===void 0){let a=document.createDocumentFragment();r=lt(h,a),r.setConnected(!1),this.et.set(t,r)}Rt(r,[i]),Ye(r,void 0,i)}if(n!==null){if(t===null||t!==n){let i=this.et.get(n);if(i!==void 0){let r=Vs(i).pop();Uc(s),Ye(s,void 0,r),Rt(s,[r])}}this.it=e}else this.it=void 0;return this.render(e)}});/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var Gc=ls(class extends dt{constructor(){super(...arguments),this.key=h}render(s,e){return this.key=s,e}update(s,[e,t]){return e!==this.key&&(Rt(s),this.key=e),t}});function Kc(s){let e=document.createComment("");s.replaceWith(e),lt(h,s.renderRoot,s.renderOptions),e.replaceWith(s),s.requestUpdate()}var c=void 0,m=s=>({attribute:!1}),$=s=>({state:!0}),b=(s,e)=>class extends(e??Ce){static properties=s};var N=(s,e)=>s.querySelector(e);var Vc="unpacking",Yc="starting Python",Xc="loading numpy",ut="ready",Jc=s=>({kind:"start",names:s}),Zc=(s,e)=>({kind:"part",name:s,contents:e}),Qc=(s,e,t,n)=>({kind:"ask",number:s,operation:e,body:t,packs:n});var eu=s=>({kind:"unable",reason:s}),tu=s=>({kind:"died",reason:s});var J2="take over",su=()=>({kind:J2}),Z2="started",nu=()=>({kind:Z2}),iu="took over";var ru="which build";var au="holds everything you set.";async function ou(s){try{return await navigator.clipboard.writeText(s),!0}catch{return!1}}async function Ys(s=location.href){return await ou(s)?{text:`Link copied. It ${au}`,link:""}:{text:`Copy this link; it ${au}`,link:s}}async function lu(s,e){let t=s.slice(s.indexOf("#")),n=async()=>{let a=await ou(t);e({text:`${a?"Copied":"Copy this"}: put it behind the address of another copy of this page.`,link:a?"":t})},{text:i,link:r}=await Ys(s);return{text:`${i} This page is a file, so the link works on this device only. For others copy it as text, or give the address of the page on the web under Station.`,link:r,action:{words:"Copy as text",run:n}}}var Xs={cable:"CableRun",wires:"WireRun",joint:"Joint",tuner:"Tuner",transformer:"Transformer",section:"Section",part:"Part",measured:"MeasuredPart"},ri={vswr:"GivenVswr",resonant:"ResonantAntenna",impedance:"GivenImpedance",table:"ImpedanceTable",measured:"MeasuredLoad",dummy:"DummyLoad"},Js=["arrester","switch","meter","attenuator","filter","divider"],ai=({kind:s,what:e})=>s==="part"&&Js.includes(e)?e:s;var Q2={choose:"choose",line:"station",spread:"station",fitout:"fitout",sweep:"sweep",span:"sweep",kit:"kit"},du={elements:["Element",s=>s&&ai(s)],ports:["Port",()=>"port"],owned:["Adapter",()=>"owned"]},eg={load:"The antenna"},tg=/_(w|hz|m|db|ohm|c|v|a|s|f|h|k|deg|w_per_m2)$/,sg=["first","second","third","fourth","fifth","sixth","seventh","eighth","ninth","tenth"],ng=/^\w+(\[\d+\]|\.\w+)*$/;function oi({field:s="",value:e,allowed:t,message:n},i,r,a){if(!ng.test(s)||s==="request")return n;let{lead:l,name:d,index:u}=ig(s,r,a),p=d.split(".").at(-1),f=i.labelOf(d)??eg[p]??lg(p),y=u===void 0?"":`, ${sg[u]??`${u+1}th`} entry`,w=i.fieldOf(d),v=u===void 0?w:w?.items,S=rg(e),q=i.labelOf(d)&&v?{vocabulary:i,name:d}:void 0,K=og(S,v,q,t);return`${l}${f}${y}: ${ag(S,q)}; allowed: ${K}.`}function ig(s,e,t){let n=s.match(/\w+/g),[i,r]=n,a=/\[\d+\]$/.test(s)?Number(n.at(-1)):void 0,l=n.filter(p=>!/^\d+$/.test(p)),d=l.at(-1);if(i in du&&/^\d+$/.test(r)&&l.length>1){let[p,f]=du[i],y=t[i]?.[r];return{lead:`${y?.name||`${p} ${Number(r)+1}`}, `,name:`${f(y)??i}.${d}`,index:a}}if(i==="load"&&l.length>1)return{lead:"",name:`load_${t.load?.kind}.${d}`,index:a};if(l.length>1)return{lead:"",name:l.slice(-2).join("."),index:a};let u=Q2[e];return{lead:"",name:u?`${u}.${d}`:d,index:a}}function rg(s){try{return JSON.parse(s)}catch{return String(s)}}function ag(s,e){return s==null?"not given":typeof s=="number"?e?e.vocabulary.spoken(e.name,s):String(s):typeof s=="string"?e?.vocabulary.nameOf(e.name,s)??`“${s}”`:Array.isArray(s)&&s.length===0?"none":JSON.stringify(s)}function og(s,e,t,n){if(!t||s===null)return n;let{vocabulary:i,name:r}=t;if(e.type==="number")return typeof s=="number"&&s>=e.min&&s<=e.max?n:i.rangeOf(r);let a=i.namesOf(r);return typeof s=="string"&&a.length>0&&i.nameOf(r,s)===void 0?`one of ${a.join(", ")}`:n}function lg(s){let e=s.replace(tg,"").replaceAll("_"," ");return e.charAt(0).toUpperCase()+e.slice(1)}var ie=class{status="initial";result;answered;error;#e;#t;#s=0;#n;#i;constructor(e,t){this.#e=e,this.#t=t,e.addController(this)}hostDisconnected(){this.cancel()}async ask(e){this.cancel();let t=++this.#s;this.#n=new AbortController,this.status="pending",this.#e.requestUpdate();try{let n=await this.#t(e,{signal:this.#n.signal});if(t!==this.#s)return;Object.assign(this,{status:"complete",result:n,answered:e,error:void 0})}catch(n){if(t!==this.#s)return;Object.assign(this,{status:"error",error:n})}this.#n=void 0,this.#e.requestUpdate(),this.#r()}askNext(e){if(this.#n===void 0)return this.ask(e);this.#i=e}cancel(){this.#s++,this.#i=void 0,this.#n?.abort(),this.#n=void 0,this.status==="pending"&&(this.status=this.result===void 0?"initial":"complete")}outdate(){this.cancel(),this.status="initial"}forget(){this.cancel(),Object.assign(this,{status:"initial",result:void 0,answered:void 0,error:void 0}),this.#e.requestUpdate()}#r(){let e=this.#i;this.#i=void 0,e!==void 0&&this.ask(e)}};var li=s=>s.length>60?`${s.slice(0,60)}…`:s;function di(s){let e=s.slice(0,3).map(li).join(", ");return s.length>3?`${e} and ${s.length-3} more`:e}var dg=(s,e)=>JSON.stringify(s)===JSON.stringify(e);function cg(s){return Array.isArray(s)?s.join(","):String(s)}function cu(s,e){return e.type==="number"?s===""||!Number.isFinite(Number(s))?void 0:Number(s):e.type==="boolean"?{true:!0,false:!1}[s]:e.type==="choice"?e.choices.includes(s)?s:void 0:s.length>(e.longest??1/0)?void 0:s}function ug(s,e){if(e.type!=="list")return cu(s,e);let t=e.most??1/0,n=s===""?[]:s.split(",",t+1);if(n.length<e.least||n.length>t)return;let i=n.map(r=>cu(r,e.items));return i.includes(void 0)?void 0:i}function Re(s,e){return Object.keys(e).filter(n=>!dg(s[n],e[n])).map(n=>`${n}=${encodeURIComponent(cg(s[n])).replaceAll("%2C",",")}`).join("&")}function ds(s,e,t){let n={...t},i=[];for(let[r,a]of new URLSearchParams(s.replaceAll("+","%2B"))){let l=Object.hasOwn(e,r)?ug(a,e[r]):void 0;l===void 0?i.push(a===""?r:`${r}=${a}`):n[r]=l}return{state:n,unknown:i}}var uu=(s,e,t)=>[`view=${s}`,Re(e,t)].filter(Boolean).join("&");function hu(s,e,t){let n=s.split("&").filter(i=>!i.startsWith("view="));return ds(n.join("&"),e,t)}function cs(s,e){let t=new URLSearchParams(s.slice(0,8e3)).get("view");return e.includes(t)?t:e[0]}var ci=s=>`This link holds what the page does not know: ${di(s)}. Everything else is restored.`,mu=s=>s.length>8e3?{fragment:"",problem:`This link is longer than ${8e3} characters and is not read.`}:{fragment:s,problem:""};var Zs=Symbol("vocabulary"),j=class extends Ce{#e=new xe(this,{context:Zs,subscribe:!0});get vocabulary(){return this.#e.value}};var Qs=Symbol("station"),$e=class extends j{#e=new xe(this,{context:Qs});#t;get stationStore(){return this.#e.value}get station(){return this.stationStore.present}connectedCallback(){super.connectedCallback(),this.#t=this.stationStore.listen(e=>this._stationChanged(e))}disconnectedCallback(){super.disconnectedCallback(),this.#t?.()}_stationChanged(e){this.requestUpdate()}};var ui=1500;function fa(s){let e=new TextEncoder().encode(s);return btoa(String.fromCharCode(...e)).replaceAll("+","-").replaceAll("/","_").replace(/=+$/,"")}function ga(s){let e=Uint8Array.from(atob(s.replaceAll("-","+").replaceAll("_","/")),t=>t.charCodeAt(0));return new TextDecoder("utf-8",{fatal:!0}).decode(e)}function hi(s,e,t,n=s){let i=JSON.stringify(t),r=i.length>ui?void 0:`${s}&${e}=${fa(i)}`;return r===void 0||r.length>ui?{fragment:n,whole:!1}:{fragment:r,whole:!0}}function mi(s,{key:e,names:t,unfolded:n=l=>l,read:i,what:r,instead:a}){let l=new URLSearchParams(s),d=[...l.keys()].filter(p=>p!==e&&!t.includes(p)),u=d.length>0?`This link holds what the page does not know: ${di(d)}.`:"";if(!l.has(e))return{document:void 0,problem:u};try{return{document:i(hg(l.get(e),n)),problem:u}}catch(p){if(!(p instanceof RangeError))throw p;return{document:void 0,problem:`The ${r} in this link can’t be used: ${p.message} ${a}`}}}function hg(s,e){try{return e(JSON.parse(ga(s)))}catch{throw new RangeError("it is cut short or altered.")}}function F(s,e,t){let n=JSON.stringify(e)??"left out";throw new RangeError(`${li(s)} is ${li(n)}; allowed: ${t}.`)}var mg=s=>typeof s=="object"&&s!==null&&!Array.isArray(s);function D(s,e){return mg(e)||F(s,e,"a JSON object"),e}function re(s,e,t,n,i){return(!Array.isArray(e)||e.length<t||e.length>n)&&F(s,e,`a list of ${t} to ${n} ${i}`),e}var pu={number:({min:s,max:e},t)=>typeof t=="number"&&t>=s&&t<=e,choice:({choices:s},e)=>s.includes(e),boolean:(s,e)=>typeof e=="boolean",text:({longest:s},e)=>typeof e=="string"&&e.length<=(s??1/0)},ba={number:({min:s,max:e})=>`a number from ${s} to ${e}`,choice:({choices:s})=>`one of ${s.join(", ")}`,boolean:()=>"true or false",text:({longest:s})=>s?`text of up to ${s} characters`:"text"};function te(s,e,t,n=[]){let i=s===""?"":`${s}.`;for(let[r,a]of Object.entries(e)){if(n.includes(r))continue;Object.hasOwn(t,r)||F(`${i}${r}`,a,`only the fields ${[...n,...Object.keys(t)].join(", ")}`);let l=t[r];(a===null?!l.nullable:!pu[l.type](l,a))&&F(`${i}${r}`,a,ba[l.type](l))}for(let[r,a]of Object.entries(t))a.default===null&&!a.nullable&&!(r in e)&&F(`${i}${r}`,void 0,ba[a.type](a))}function ae(s,e,t){return pu.text({longest:t},e)||F(s,e,ba.text({longest:t})),e}var pi={name:"Field day",request:{elements:[{kind:"joint",family:"uhf"},{kind:"cable",cable:"rg_58",length_m:3},{kind:"joint",family:"uhf"},{kind:"part",what:"arrester",loss_db:.1,vswr:1.1,power_limit_w:400,voltage_limit_v:600,name:"Arrester"},{kind:"joint",family:"uhf",adapter_to:"n"},{kind:"cable",cable:"rg_213",length_m:28},{kind:"joint",family:"n",exposure:"exposed"}]}};var us=12,fu=4*us,fi=60,Xe={lines:[pi],current:0},ve=s=>s.lines[s.current];var en=60;function gu(s,e,t,n){let{kind:i}=D(s,e);t.includes(i)||F(`${s}.kind`,i,`one of ${t.join(", ")}`),te(s,e,n(i),["kind"])}function _a(s,e,t){let{kind:n}=D(s,e);if(n!=="table")return gu(s,e,Object.keys(ri),i=>t[`load_${i}`]);re(`${s}.points`,e.points,2,2e3,"points").forEach((i,r)=>{te(`${s}.points[${r}]`,D(`${s}.points[${r}]`,i),t.point)})}function pg(s,e,t,n){let{preamplifier:i=null}=D(s,e);if(te(s,e,t.receiver,["preamplifier"]),i===null)return;let r=`${s}.preamplifier`;te(r,D(r,i),t.preamplifier),i.before_element>=n&&F(`${r}.before_element`,i.before_element,`0 to ${n-1}`)}function wa(s,e,t=""){let n=t===""?"":`${t}.`;return D(t||"line",s),re(`${n}elements`,s.elements,0,fi,"elements").forEach((i,r)=>{gu(`${n}elements[${r}]`,i,Object.keys(Xs),a=>e[a])}),s.load!==void 0&&_a(`${n}load`,s.load,e),s.transmitter!==void 0&&te(`${n}transmitter`,D(`${n}transmitter`,s.transmitter),e.transmitter),s.receiver!==void 0&&pg(`${n}receiver`,s.receiver,e,s.elements.length),te(t,s,e.station,["elements","load","transmitter","receiver"]),s}function gi(s,e){return re("lines",s,1,fu,"lines").map((t,n)=>{let{name:i,request:r}=D(`lines[${n}]`,t);return{name:ae(`lines[${n}].name`,i,en),request:wa(r,e,`lines[${n}].request`)}})}var pe=Object.freeze({version:1,name:"",address:"",units:"metric",settings:{},rigs:[],rig:-1,antennas:[],antenna:-1,gear:[],cables:[]}),_i=({rigs:s,rig:e})=>s[e],wi=({antennas:s,antenna:e})=>s[e],bi=s=>s!=null;function fg(s,e){let t=Object.fromEntries(Object.entries({...s,...e}).filter(([,n])=>bi(n)));return bi(e.band)?delete t.frequency_hz:bi(e.frequency_hz)&&delete t.band,t}var ht=(s,{settings:e,...t})=>({...s,...t,settings:e?fg(s.settings,e):s.settings}),_u=(s,e)=>JSON.stringify(s)===JSON.stringify(e),bu=(s,e)=>Object.fromEntries(Object.keys({...s,...e}).filter(t=>!_u(s[t],e[t])).map(t=>[t,s[t]]));function hs(s,e){let{settings:t,...n}=bu(e,s),i=bu(e.settings,s.settings);return Object.keys(i).length>0?{...n,settings:i}:n}var wu=s=>s?.load.kind==="vswr"?{vswr:s.load.vswr}:{},yu=({rigs:s},e)=>({rig:e,settings:{power_w:s[e]?.power_w}}),xu=({antennas:s},e)=>({antenna:e,settings:{vswr:void 0,...wu(s[e])}}),$u=s=>({..._i(s)&&{power_w:_i(s).power_w},...wu(wi(s))});function vu(s,e){let t=wi(s)?.load??{kind:"vswr"};return t.kind==="vswr"?{...t,vswr:s.settings.vswr??e}:t}var yi=s=>_i(s)?.behaviour&&{behaviour:_i(s).behaviour};function tn(s,e,t){return e==="band"&&bi(s.frequency_hz)?null:s[e]??t}var xi=(s,{settings:e},t)=>Object.fromEntries(Object.keys(t).map(n=>Object.hasOwn(s,n)?[n,s[n]]:[n,tn(e,n,t[n])]));function ku(s,{settings:e={},units:t=s.units,...n}){let{address:i}=s;return{...Object.keys(n).length>0?{...pe,address:i}:{...s,rig:-1,antenna:-1},...n,units:t,settings:e}}var Su=(s,e)=>_u(s.settings,e?.settings??{})?s:{...s,settings:e?.settings??{}};var $i={rigs:12,antennas:24,gear:60,cables:40},gg=40,bg=s=>s.type==="number"?{...s,min:-Number.MAX_VALUE,max:Number.MAX_VALUE}:s;function _g(s,e){let{bands:t,...n}=D("settings",s),{bands:i,...r}=e,a=Object.entries(r).map(([l,d])=>[l,bg(d)]);te("settings",n,Object.fromEntries(a)),t!==void 0&&Ou("settings.bands",t,i.most)}var Ou=(s,e,t)=>re(s,e,0,t,"names").forEach((n,i)=>ae(`${s}[${i}]`,n,gg));function Eu(s,e,t){(!Number.isInteger(e)||e<-1||e>=t)&&F(s,e,`a place from -1 to ${t-1}`)}function vi(s,e){let t={...pe,...D("station",s)},{version:n,settings:i,rigs:r,rig:a,antennas:l,antenna:d,gear:u,cables:p,...f}=t;n!==1&&F("version",n,`${1}`),te("",f,e.shack),_g(i,e.settings);let y=(w,v)=>re(w,t[w],0,$i[w],w).forEach((S,q)=>{let K=`${w}[${q}]`;v(K,D(K,S))});return y("rigs",(w,v)=>te(w,v,e.rig)),y("gear",(w,v)=>te(w,v,e.port)),y("antennas",(w,v)=>{te(w,v,e.antenna,["load"]),_a(`${w}.load`,v.load,e)}),Ou("cables",p,$i.cables),Eu("rig",a,r.length),Eu("antenna",d,l.length),t}var $a="setup",ya="units=us",Tu=(s,e)=>JSON.stringify(s)===JSON.stringify(e),ki=(s,e)=>Object.fromEntries(Object.entries(s).filter(([t])=>e(t))),xa=s=>Object.keys(s).length===0;function sn(s,e=[]){let{settings:t,units:n,address:i,...r}=s,a=ki(t,f=>!e.includes(f)),l=ki(t,f=>e.includes(f)),d={...ki(r,f=>!Tu(r[f],pe[f])),...!xa(l)&&{settings:l}},u=Object.fromEntries(Object.keys(a).map(f=>[f,void 0])),p=xa(d)?"":`${$a}=${fa(JSON.stringify(d))}`;return[Re(a,u),n===pe.units?"":ya,p].filter(Boolean).join("&")}var Au="mode=ssb";function qu(s,e,t){let n=s.split("&"),i=q=>q.split("=")[0],r=q=>Object.hasOwn(t.settings,i(q))&&!e.includes(i(q)),a=q=>r(q)&&!q.endsWith("=null"),l=q=>i(q)===$a,d=n.includes(ya),u=n.filter(q=>!r(q)&&!l(q)&&q!==ya).join("&"),{state:p,unknown:f}=ds(n.filter(a).join("&"),t.settings,{}),{document:y,problem:w}=wg(n.find(l),t);if(xa(p)&&y===void 0&&!d)return{rest:u,changes:void 0,unknown:f,problem:w};let v={...y?.settings,...p},S=ki(v,q=>!Tu(v[q],t.settings[q].default));return{rest:u,changes:{...y,...d&&{units:"us"},settings:S},unknown:f,problem:w}}function wg(s,e){if(s===void 0)return{document:void 0,problem:""};try{let t=JSON.parse(ga(s.slice($a.length+1)));return vi(t,e),{document:t,problem:""}}catch(t){return{document:void 0,problem:`The station in this link can’t be used: ${t instanceof RangeError?t.message:"it is cut short or altered."} Yours is kept.`}}}var yg=["http:","https:"],xg="jointwise-address",va=({href:s})=>s.replace(/[?#].*$/,""),ms=s=>URL.canParse(s)&&yg.includes(new URL(s).protocol);function zt(s){return s===""||s.length<=200&&ms(s)&&!s.includes("#")?"":`Address of the page is “${s}”; allowed: a web address with its http or https, without “#”, up to 200 characters.`}function Mu(s){try{let e=s().getItem(xg)??"";return zt(e)===""?e:""}catch{return""}}var Si=(s,e)=>s.address||va(e);var _=g`
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
`;var $g={[Vc]:10,[Yc]:30,[Xc]:60},ka=class extends b({status:{type:String,reflect:!0},stage:{type:String}}){static styles=[_,g`
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
    `];constructor(){super(),this.status="initial",this.stage="",this._reached=""}willUpdate(){this.stage?this._reached=this.stage:this.status!=="pending"&&(this._reached="")}render(){let e=$g[this._reached],t=e===void 0?o`<i class="moving"></i>`:o`<i style="width: ${e}%"></i>`,n=this._reached?o`<p role="status">Starting the core: ${this._reached}</p>`:h;return o`<div>${t}</div>${n}`}};customElements.define("jw-progress",ka);function x(s,e,t){s.dispatchEvent(new CustomEvent(e,{detail:t,bubbles:!0,composed:!0}))}var Sa=class extends b({undo:{type:Boolean},redo:{type:Boolean}}){static styles=[_,g`
      div { display: flex; gap: 6px; }
      button { font-size: 0.85rem; padding: 0 10px; }
      button:disabled { opacity: 0.6; cursor: default; }
      @media print { :host { display: none; } }
    `];render(){return o`<div role="group" aria-label="Undo">
      <button id="undo" ?disabled=${!this.undo} @click=${()=>x(this,"jw-turn",{way:"undo"})}>Undo</button>
      <button id="redo" ?disabled=${!this.redo} @click=${()=>x(this,"jw-turn",{way:"redo"})}>Redo</button>
    </div>`}};customElements.define("jw-undo",Sa);var vg=(s,e)=>JSON.stringify(s)===JSON.stringify(e),kg={own:!0},Cu={left:!0},mt=class extends b({transport:m(c),stage:{type:String}},$e){static view="";static ownNames=[];constructor(){super(),this.stage="",this._begun=!1,this._isChanging=!1,this._isFollowing=!1,this._travelled=()=>this._follow(location.hash.slice(1),!0),this._enquiries=[]}connectedCallback(){super.connectedCallback(),window.addEventListener("popstate",this._travelled),this._begun||this._begin(),this._begun=!0,this._follow(location.hash.slice(1))}disconnectedCallback(){super.disconnectedCallback(),window.removeEventListener("popstate",this._travelled),this._asked=void 0}willUpdate(e){e.get("transport")&&this._askAnew()}shouldUpdate(){return this._begun}updated(){this.transport!==void 0&&this._ask()}get _own(){}set _own(e){throw new Error("A view without a question of its own has none to change.")}_follow(e,t=!1){if(cs(e,this.vocabulary.views)!==this._name)return;let{own:n=!1,left:i=!1}=history.state??{},r=mu(e),a=qu(r.fragment,this._ownNames,this.vocabulary.fields);this._isFollowing=!0;let l=i?"":this._bring(a.changes,n,t),{unknown:d=[],...u}=this._restore(a.rest,n||i)??{};this._isFollowing=!1;let p=[...d,...a.unknown],y=[r.problem,a.problem,p.length>0&&ci(p),u.text,l].filter(Boolean).join(" ");this._notice(y&&{...u,text:y}),this._address(!0)}_bring(e,t,n){let i=this.stationStore;if(t&&!i.isNew)n&&i.put(Su(i.present,e));else if(e)return i.bring(this._name,ku(i.present,e));return""}get _name(){return this.constructor.view}get _ownNames(){return this.constructor.ownNames}_begin(){}_restore(e,t){}get _fragment(){return""}get _wholeFragment(){return[this._fragment,sn(this.station,this._ownNames)].filter(Boolean).join("&")}_linkTo(e=this._fragment){let t=sn(this.station,this._ownNames)||Au;return`${ms(location.href)?location.href.replace(/#.*$/,""):Si(this.station,location)}#${[e,t].filter(Boolean).join("&")}`}async _copyLink(e){let t=this._linkTo(e);this._notice(ms(t)?await Ys(t):await lu(t,n=>this._notice(n)))}_askAnew(){this._asked=void 0;for(let e of this._enquiries)e.outdate()}_ask(){}_put(e,t={},{live:n=!1,isStep:i=!0,isEntry:r=!0}={}){let a=this._own;this._isChanging=!0,this._own=e,i?this.stationStore.change(this._name,t,{before:a,after:e},n):this.stationStore.put(ht(this.station,t)),this._isChanging=!1,n||this._address(!r),this.requestUpdate()}_settings(e,t=this.vocabulary.first.settings){let n=Object.entries(e).map(([i,r])=>[i,vg(r,t[i])?void 0:r]);return Object.fromEntries(n)}changeStation(e,t=!1){this._put(this._own,e,{live:t})}_stationChanged(e){super._stationChanged(e),!e&&!this._isChanging&&this._begun&&this._address(!0)}_address(e){if(this._isFollowing)return;let t=this._wholeFragment;if(t===location.hash.slice(1)&&(!e||history.state?.own))return;let i=t?`#${t}`:location.pathname+location.search;history[e?"replaceState":"pushState"](kg,"",i)}get canUndo(){return this.stationStore.canUndo(this._name)}get canRedo(){return this.stationStore.canRedo(this._name)}turn(e){this._isChanging=!0;let t=this.stationStore.turn(e,this._name);return this._isChanging=!1,t?.own&&(this._own=this._turned(t.own)),t&&this._address(!0),this.requestUpdate(),t!==void 0}_turned({to:e}){return e}_undoButtons(){return o`<jw-undo ?undo=${this.canUndo} ?redo=${this.canRedo}
      @jw-turn=${({detail:e})=>this.turn(e.way)}></jw-undo>`}_enquiry(e){let t=new ie(this,(n,i)=>this._call(e,n,i));return this._enquiries.push(t),t}async _call(e,t,n){try{return await this.transport.ask(e,t,n)}catch(i){let r=i;throw r.field&&(r.message=oi(r,this.vocabulary,e,t)),r}}_progress({status:e}){return o`<jw-progress status=${e} stage=${this.stage===ut?"":this.stage}></jw-progress>`}_notice(e){e&&x(this,"jw-notice",e)}};var H=(s,e,t)=>ja(s,new Blob([t],{type:e}));function ja(s,e){let t=document.createElement("a");t.href=URL.createObjectURL(e),t.download=s,t.click(),URL.revokeObjectURL(t.href)}var ps=(s,e)=>H(s,"application/json",JSON.stringify({made_by:`Jointwise ${z.version}`,...e},null,1));var Sg=s=>s/2**32|0,jg=s=>s>>>0;function Ru(s,e,t,n){let i=Sg(t),r=jg(t);s.setUint32(e,n?r:i,n),s.setUint32(e+4,n?i:r,n)}function zu(s){return s instanceof Uint8Array||ArrayBuffer.isView(s)&&s.constructor.name==="Uint8Array"&&"BYTES_PER_ELEMENT"in s&&s.BYTES_PER_ELEMENT===1}var Ea=s=>s?`"${s}" `:"";function Eg(s,e=""){if(typeof s!="number")throw new TypeError(Ea(e)+"expected number, got "+typeof s);if(!Number.isSafeInteger(s)||s<0)throw new RangeError(Ea(e)+"expected integer >= 0, got "+s);return s}function ji(s,e,t=""){if(zu(s)&&(e===void 0||s.length===e))return s;e!==void 0&&Eg(e,"length");let n=zu(s),i=e!==void 0?` of length ${e}`:"",r=n?`length=${s.length}`:`type=${typeof s}`,a=Ea(t)+"expected Uint8Array"+i+", got "+r;throw n?new RangeError(a):new TypeError(a)}var Og=(s,e)=>{if(s===null||typeof s!="object"||Array.isArray(s))throw new TypeError((e==="object"?"":`"${e}" `)+"expected object, got type="+typeof s)},Nu=(s,e)=>{Og(s,e);let t=Object.getPrototypeOf(s);if(t!==Object.prototype&&t!==null)throw new TypeError(`"${e}" expected plain object`);if(Object.hasOwn(s,"__proto__"))throw new TypeError(`"${e}.__proto__" is not allowed`)};function Oa(s,e=!0){if(s.destroyed)throw new Error("hash was destroyed");if(e&&s.finished)throw new Error("digest() was already called")}function Lu(s,e){ji(s,void 0,"output");let t=e.outputLen;if(!(s.length>=t))throw new RangeError('"output" expected length >= '+t)}function Ta(...s){for(let e=0;e<s.length;e++)s[e].fill(0)}function Ei(s){return new DataView(s.buffer,s.byteOffset,s.byteLength)}function je(s,e){return s<<32-e|s>>>e}var Tg=typeof Uint8Array.from([]).toHex=="function"&&typeof Uint8Array.fromHex=="function",Ag=Array.from({length:256},(s,e)=>e.toString(16).padStart(2,"0"));function Pu(s){if(ji(s),Tg)return s.toHex();let e="";for(let t=0;t<s.length;t++)e+=Ag[s[t]];return e}function qg(s,e,t="opts"){return Nu(s,"defaults"),e!==void 0&&Nu(e,t),Object.assign(Object.create(null),s,e)}function Wu(s,e={}){if(typeof s!="function")throw new TypeError('"hashCons" expected function, got type='+typeof s);e=qg({},e,"info");let t=(i,r)=>s(r).update(i).digest(),n=s(void 0);return t.outputLen=n.outputLen,t.blockLen=n.blockLen,t.canXOF=n.canXOF,t.create=i=>s(i),Object.assign(t,e),Object.freeze(t)}var Iu=s=>({oid:Uint8Array.from([6,9,96,134,72,1,101,3,4,2,s])});function Bu(s,e,t){return s&e^~s&t}function Hu(s,e,t){return s&e^s&t^e&t}var Oi=class{blockLen;outputLen;canXOF=!1;padOffset;isLE;buffer;view;finished=!1;length=0;pos=0;destroyed=!1;constructor(e,t,n,i){this.blockLen=e,this.outputLen=t,this.padOffset=n,this.isLE=i,this.buffer=new Uint8Array(e),this.view=Ei(this.buffer)}update(e){Oa(this),ji(e);let{view:t,buffer:n,blockLen:i}=this,r=e.length,a=!1;for(let l=0;l<r;){let d=Math.min(i-this.pos,r-l);if(d===i){let u=Ei(e);for(;i<=r-l;l+=i)this.process(u,l);a=!0;continue}n.set(l===0&&d===r?e:e.subarray(l,l+d),this.pos),this.pos+=d,l+=d,this.pos===i&&(this.process(t,0),this.pos=0,a=!0)}return this.length+=e.length,a&&this.roundClean(),this}digestInto(e){Oa(this),Lu(e,this),this.finished=!0;let{buffer:t,view:n,blockLen:i,isLE:r}=this,{pos:a}=this;t[a++]=128,t.fill(0,a),this.padOffset>i-a&&(this.process(n,0),t.fill(0)),Ru(n,i-8,this.length*8,r),this.process(n,0),this.roundClean();let l=e===t?n:Ei(e),d=this.outputLen,u=d/4,p=this.get();if(d%4||u>p.length)throw new Error("invalid outputLen");for(let f=0;f<u;f++)l.setUint32(4*f,p[f],r)}digest(){let{buffer:e,outputLen:t}=this;this.digestInto(e);let n=e.slice(0,t);return this.destroy(),n}_cloneIntoMeta(e){let{buffer:t,length:n,finished:i,destroyed:r,pos:a}=this;return e.destroyed=r,e.finished=i,e.length=n,e.pos=a,a&&e.buffer.set(t),e}clone(){return this._cloneInto()}},Fu=Uint32Array.from([1779033703,3144134277,1013904242,2773480762,1359893119,2600822924,528734635,1541459225]);var Mg=Uint32Array.from([1116352408,1899447441,3049323471,3921009573,961987163,1508970993,2453635748,2870763221,3624381080,310598401,607225278,1426881987,1925078388,2162078206,2614888103,3248222580,3835390401,4022224774,264347078,604807628,770255983,1249150122,1555081692,1996064986,2554220882,2821834349,2952996808,3210313671,3336571891,3584528711,113926993,338241895,666307205,773529912,1294757372,1396182291,1695183700,1986661051,2177026350,2456956037,2730485921,2820302411,3259730800,3345764771,3516065817,3600352804,4094571909,275423344,430227734,506948616,659060556,883997877,958139571,1322822218,1537002063,1747873779,1955562222,2024104815,2227730452,2361852424,2428436474,2756734187,3204031479,3329325298]),pt=new Uint32Array(64),Aa=class extends Oi{A=0;B=0;C=0;D=0;E=0;F=0;G=0;H=0;constructor(e,t){super(64,e,8,!1),this.A=t[0]|0,this.B=t[1]|0,this.C=t[2]|0,this.D=t[3]|0,this.E=t[4]|0,this.F=t[5]|0,this.G=t[6]|0,this.H=t[7]|0}get(){let{A:e,B:t,C:n,D:i,E:r,F:a,G:l,H:d}=this;return[e,t,n,i,r,a,l,d]}set(e,t,n,i,r,a,l,d){this.A=e|0,this.B=t|0,this.C=n|0,this.D=i|0,this.E=r|0,this.F=a|0,this.G=l|0,this.H=d|0}_cloneInto(e){return(e||=new this.constructor).set(...this.get()),this._cloneIntoMeta(e)}process(e,t){for(let f=0;f<16;f++,t+=4)pt[f]=e.getUint32(t,!1);for(let f=16;f<64;f++){let y=pt[f-15],w=pt[f-2],v=je(y,7)^je(y,18)^y>>>3,S=je(w,17)^je(w,19)^w>>>10;pt[f]=S+pt[f-7]+v+pt[f-16]|0}let{A:n,B:i,C:r,D:a,E:l,F:d,G:u,H:p}=this;for(let f=0;f<64;f++){let y=je(l,6)^je(l,11)^je(l,25),w=p+y+Bu(l,d,u)+Mg[f]+pt[f]|0,S=(je(n,2)^je(n,13)^je(n,22))+Hu(n,i,r)|0;p=u,u=d,d=l,l=a+w|0,a=r,r=i,i=n,n=w+S|0}n=n+this.A|0,i=i+this.B|0,r=r+this.C|0,a=a+this.D|0,l=l+this.E|0,d=d+this.F|0,u=u+this.G|0,p=p+this.H|0,this.set(n,i,r,a,l,d,u,p)}roundClean(){Ta(pt)}destroy(){this.destroyed=!0,this.set(0,0,0,0,0,0,0,0),Ta(this.buffer)}},qa=class extends Aa{constructor(){super(32,Fu)}};var Uu=Wu(()=>new qa,Iu(1));var Du="jointwise-";var Ti,nn=s=>Ti?s.replace(Du,`${Du}${Ti.mark}-`):s;function Z(){if(!Ti)return localStorage;let{texts:s}=Ti;return{getItem:e=>Cg(nn(e))??s[e]??null,setItem:(e,t)=>localStorage.setItem(nn(e),t),removeItem:e=>localStorage.removeItem(nn(e))}}function Cg(s){try{return localStorage.getItem(s)}catch{return null}}var Ma=(s,e)=>e==="metric"?s:{...s,units:e},Gu=(s,e)=>e==="metric"?s:{ask:(t,n,i)=>s.ask(t,Ma(n,e),i)};var ft=(s,e={})=>Object.fromEntries(Object.entries(s).map(([t,n])=>[t,t in e?{...n,type:"choice",choices:e[t].map(({id:i})=>i)}:n])),oe=(s,e)=>({"":s,...Object.fromEntries(e.map(({id:t,name:n})=>[t,n]))});var Rg=["family"],zg="20m",Ca=60,Ng=200,Ai=s=>({type:"text",longest:s,default:"",nullable:!1}),Ra=s=>({...s,nullable:!0,default:null}),Lg={plug:"plug (has the nut)",jack:"jack"},Ku={fields:({requests:{cell:s,matrix:e},parts:{Port:t,Transmitter:n}},{families:i,transmitters:r})=>({settings:{...Object.fromEntries(Object.entries(s).filter(([a])=>!Rg.includes(a))),bands:e.bands,band:{...s.band,default:zg}},rig:{name:Ai(Ca),power_w:s.power_w,...ft({behaviour:Ra(n.behaviour),family:Ra(t.family),gender:Ra(t.gender)},{behaviour:r,family:i})},antenna:{name:Ai(Ca)},shack:{name:Ai(Ca),address:Ai(Ng),units:{type:"choice",choices:["metric","us"],default:"metric",nullable:!1}}}),words:({bands:s,families:e,transmitters:t})=>({"settings.bands":{label:"Bands in use",named:s},"settings.band":{label:"Band looked at",options:oe("spot frequency",s)},"settings.frequency_hz":{label:"Spot frequency",factor:1e6,unit:"MHz"},"settings.power_w":{label:"Power looked at"},"rig.name":{label:"What it is"},"rig.power_w":{label:"Greatest power, peak envelope"},"rig.behaviour":{label:"At a bad SWR",options:oe("not said",t)},"rig.family":{label:"Its output socket",options:oe("not said",e)},"rig.gender":{label:"Plug or jack",options:{"":"not said",...Lg}},"antenna.name":{label:"What it is"},"shack.name":{label:"Name of the station"},"shack.address":{label:"Address of the page on the web"},"shack.cables":{label:"Cables in use"},"shack.units":{label:"Units",options:{metric:"metric",us:"US"}}})};var ze=class{present;#e;#t;#s;#n;#i;#r=()=>{};wasKept;problem;spoilt;constructor(e,t,n,i){let{document:r,text:a,spoilt:l,problem:d}=e.recalled(t,n);this.#e=e,this.#t=t,this.#s=n,this.#i=a,this.wasKept=r!==void 0,this.present=this.#n=r??i,this.problem=d,this.spoilt=l}attach(e,t){this.#r=t;let n=()=>{let r=this.present;this.catchUp()&&t(r)},i=()=>{};e.addController({hostConnected:()=>{i=this.#e.listen(n),n()},hostDisconnected:()=>i()})}put(e){if(e===this.present)return;let t=this.present;this.catchUp()&&this.#r(t),this.present=this.#e.merged({base:t,mine:e,theirs:this.present}),this.problem=this.#e.remember(this.#t,this.present),this.problem===""&&(this.#n=this.present,this.#i=JSON.stringify(this.present))}turned(e,t){return this.#e.merged({base:e,mine:t,theirs:this.present})}catchUp(){let{document:e,text:t}=this.#e.recalled(this.#t,this.#s);if(e===void 0||t===this.#i)return!1;let n=this.present;return this.present=this.#e.merged({base:this.#n,mine:n,theirs:e}),this.#n=e,this.#i=t,this.present!==n}};var qi=class{#e=[];#t=[];add(e){this.#e=[...this.#e,e].slice(-200),this.#t=[]}canUndo(e){return za(this.#e,e)!==-1}canRedo(e){return za(this.#t,e)!==-1}undo(e){return Vu(this.#e,this.#t,e)}redo(e){return Vu(this.#t,this.#e,e)}},za=(s,e)=>s.findLastIndex(t=>t.view===e||t.own===void 0);function Vu(s,e,t){let n=za(s,t);if(n===-1)return;let[i]=s.splice(n,1);return e.push(i),i}var Na=(s,e)=>s===e||JSON.stringify(s)===JSON.stringify(e),fe=class{#e;#t;#s;constructor(e,t,n){this.#e=e,this.#t=t,this.#s=n}checked(e,t){return this.#t(e,t)}merged(e){let{base:t,mine:n,theirs:i}=e;return Na(i,t)||Na(i,n)?n:Na(n,t)?i:this.#s?.(e)??n}listen(e){let{key:t}=this.#e,n=i=>(i.key===nn(t)||i.key===null)&&e();return window.addEventListener("storage",n),()=>window.removeEventListener("storage",n)}recalled(e,t){let{key:n,blocked:i,spoilt:r}=this.#e,a;try{a=e().getItem(n)}catch{return{problem:i}}if(a===null)return{problem:""};try{return{document:this.#t(JSON.parse(a),t),text:a,problem:""}}catch{return Pg(e(),n,a),{spoilt:a,problem:r}}}remember(e,t){let{key:n,blocked:i,full:r}=this.#e,a;try{a=e()}catch{return i}try{return a.setItem(n,JSON.stringify(t)),""}catch{return r}}};function Pg(s,e,t){try{s.removeItem(e),s.setItem(`${e}-set-aside`,t)}catch{}}var La=(s,e)=>JSON.stringify(s)===JSON.stringify(e);function Wg(s,e){let t=new Map;for(let n of s){let i=e(n);for(;t.has(i);)i+=`
`;t.set(i,n)}return t}function Ee({base:s,mine:e,theirs:t},n,i=()=>{}){let[r,a,l]=[s,e,t].map(f=>Wg(f,n)),d=new Set([...e,...t].map(n)),u=f=>d.has(f),p=[];for(let f of new Set([...a.keys(),...l.keys()])){let[y,w,v]=[r.get(f),a.get(f),l.get(f)];La(w,y)?p.push(v):La(v,y)||La(w,v)?p.push(w):w===void 0||v===void 0?p.push(w??v):p.push(w,i(v,u))}return p.filter(f=>f!==void 0)}function Yu(s,e,t){for(let n=2;;n++){let i=` (${n})`,r=s.slice(0,t-i.length)+i;if(!e(r))return r}}var Ig={key:"jointwise-station",blocked:"This browser keeps nothing for the page: your station ends when it is closed. Save it as a file to keep it.",full:"This browser has no room for your station: the latest changes are not kept. Save it as a file to keep it.",spoilt:"The station kept in this browser could not be read and was set aside. Save it as a file to look for what is left."},Pa=({name:s})=>s;function Bg({base:s,mine:e,theirs:t}){let n=ht(t,hs(s,e)),i={rigs:Ee({base:s.rigs,mine:e.rigs,theirs:t.rigs},Pa),antennas:Ee({base:s.antennas,mine:e.antennas,theirs:t.antennas},Pa),gear:Ee({base:s.gear,mine:e.gear,theirs:t.gear},Pa)},r=(a,l)=>{let d=(e[a][l]??t[a][l])?.name;return l===-1?-1:i[a].findIndex(({name:u})=>u===d)};return{...n,...i,rig:r("rigs",n.rig),antenna:r("antennas",n.antenna)}}var rn=new fe(Ig,vi,Bg);var Wa=s=>Object.keys(s).length===0,Mi=class{present=pe;#e;#t=new qi;#s=new Set;#n;constructor(e,t){let n=Mu(e),i=n?{...pe,address:n}:pe;this.#e=new ze(rn,e,t,i),this.present=this.#e.present}get problem(){return this.#e.problem}get spoilt(){return this.#e.spoilt}follow(){rn.listen(()=>{this.#e.catchUp()&&(this.present=this.#e.present,this.#a())})}#i(){this.#e.put(this.present),this.present=this.#e.present}get isNew(){return this.present===pe}listen(e){return this.#s.add(e),()=>this.#s.delete(e)}put(e){e!==this.present&&(this.present=e,this.#i(),this.#a())}change(e,t,n,i=!1){let r=this.#n??{station:this.present,own:n?.before};this.#n=i?r:void 0,this.present=ht(this.present,t),i||(this.#r(e,r,n),this.#i()),this.#a(i)}bring(e,t){let{isNew:n}=this,i=hs(this.present,t);return Wa(i)?"":(n?this.put(ht(this.present,i)):this.change(e,i),n?"":"The station of this link is shown; Undo brings back yours.")}#r(e,t,n){let i=hs(this.present,t.station),r=hs(t.station,this.present),a=n!==void 0&&n.after!==t.own;Wa(r)&&!a||this.#t.add({view:e,...!Wa(r)&&{station:{before:i,after:r}},...a&&{own:{before:t.own,after:n.after}}})}canUndo(e){return this.#t.canUndo(e)}canRedo(e){return this.#t.canRedo(e)}turn(e,t){let n=this.#t[e](t),[i,r]=e==="undo"?["after","before"]:["before","after"];if(n)return n.station?this.put(ht(this.present,n.station[r])):this.#a(),n.own?{own:{from:n.own[i],to:n.own[r]}}:{}}#a(e=!1){for(let t of this.#s)t(e)}};var Ia=[[1e9,"G"],[1e6,"M"],[1e3,"k"],[1,""],[.001,"m"],[1e-6,"µ"],[1e-9,"n"],[1e-12,"p"]],Hg=new Set(["Hz","m","Ω","W","V","s","A","F","H","J","V/m","Ω/m","Pa","S/m"]),Fg=99.95;function E(s){let e=Math.abs(s);return`${s<0?"−":"+"}${e.toFixed(e<Fg?1:0)}`}function k(s,e=4){if(s===0)return"0";let t=Math.abs(s);if(t>=1e6||t<1e-4){let[n,i]=s.toExponential(e-1).split("e");return`${Xu(String(Number(n)))}·10${Dg(i)}`}return Xu(String(t>=10**e?Math.round(s):Number(s.toPrecision(e))))}function P(s,e,t=4){if(typeof s=="string")return s;if(e==="1"||e==="")return k(s,t);if(!Hg.has(e)||s===0)return`${k(s,t)} ${e}`;let n=Math.abs(s),[i,r]=Ia.find(([a])=>n>=a*.99999)??Ia[Ia.length-1];return`${k(s/i,t)} ${r}${e}`}var O=s=>P(s,"Hz",6);function A(s){return s===0?"receive":P(s,"W")}function Ug(s){return s===0?"Rx":s>=1e3?`${k(s/1e3,3)}k`:k(s,4)}function an(s){return s>=995e3?">1M":Ug(Je(s,2))}function Je(s,e){let t=10**(Math.floor(Math.log10(s))-e+1);return Number((Math.floor(s/t)*t).toPrecision(e))}var Xu=s=>s.replace("-","−"),Dg=s=>[...s.replace("+","")].map(e=>e==="-"?"⁻":"⁰¹²³⁴⁵⁶⁷⁸⁹"[e]).join("");var Nt=.30479999999999996,Ju=.45359237*9.80665,Zu=5/9,Gg=[[[1,"m","metre","metres","meter","meters"],[1e3,"km"],[.01,"cm"],[.001,"mm"],[1e-6,"µm","um"],[Nt,"ft","foot","feet","'"],[.0254,"in","inch","inches",'"'],[3*Nt,"yd","yard","yards"],[5280*Nt,"mi","mile","miles"]],[[1,"Hz"],[1e3,"kHz","k","K"],[1e6,"MHz","mhz","M"],[1e9,"GHz","G"]],[[1,"W","w","watt","watts"],[1e-6,"µW","uW"],[.001,"mW"],[1e3,"kW","k","K"],[1e6,"MW"]],[[1,"V","v","volt","volts"],[.001,"mV"],[1e3,"kV","k","K"]],[[1,"A","a","amp","amps"],[.001,"mA"],[1e3,"kA"]],[[1,"Ω","ohm","ohms","R"],[1e-6,"µΩ","uohm"],[.001,"mΩ","mohm"],[1e3,"kΩ","kohm","k","K"],[1e6,"MΩ","Mohm","M"]],[[1,"F"],[1e-12,"pF","p"],[1e-9,"nF","n"],[1e-6,"µF","uF","µ","u"]],[[1,"H"],[1e-9,"nH","n"],[1e-6,"µH","uH","µ","u"],[.001,"mH"]],[[1,"s","sec","second","seconds"],[.001,"ms"],[60,"min","minute","minutes"],[3600,"h","hr","hour","hours"]],[[1,"years","year","yr","yrs","y"],[1/12,"months","month"]],[[1,"N·m","Nm"],[Ju*.0254,"in-lb","in-lbs","in-lbf","lb-in","lbf-in"],[Ju*Nt,"ft-lb","ft-lbs","ft-lbf","lb-ft","lbf-ft"]],[[1,"K","kelvin"],[1,"°C","C","c","degC","celsius"],[Zu,"°F","F","f","degF","fahrenheit"]],[[1,"m²","m2"],[1e-6,"mm²","mm2"]],[[1,"Ω/m","ohm/m"],[.001,"Ω/km","ohm/km"],[.001/Nt,"Ω/1000 ft","ohm/1000 ft"]],[[1,"F/m"],[1e-12,"pF/m"],[1e-12/Nt,"pF/ft"]],[[1,"dB/m"],[.01,"dB/100 m"],[.01/Nt,"dB/100 ft"]],[[1,"1/Hz"],[1e-9,"1/GHz"]],[[1,"dB"]],[[1,"°","deg","degree","degrees"]],[[1,"W/m²","W/m2"]],[[1,"matings","mating"]],[[1,"",": 1"],[.01,"%"]]],Kg={"°C":273.15,"°F":459.67*Zu},Ci=s=>s.replace(/\s/g,"").replace(/(?<=[a-z])(?:[.·*-](?=[a-z])|\.$)/gi,""),Ba=(s,e)=>Ci(s)===Ci(e),Vg=/^m(.|Hz|ohm)$/i,Yg=(s,e)=>{let[t,n]=[Ci(s),Ci(e)],i=Vg.test(t)&&t[0]!==n[0];return t.length>1&&!i&&t.toLowerCase()===n.toLowerCase()},Qu=s=>Gg.find(e=>e.some(([,t])=>Ba(t,s)))??[[1,s]];function Lt(s,e){let t=Qu(e),[n]=[Ba,Yg].flatMap(a=>t.filter(([,...l])=>l.some(d=>a(d,s===""?e:s))));if(!n)return;let[i,r]=n;return{name:r,factor:i,zero:Kg[r]??0}}var eh=s=>s===""?[]:Qu(s).map(([,e])=>e).filter(e=>e!==""&&!Ba(e,s));var Xg={m:"ft",cm:"in",mm:"in","°C":"°F","N·m":"in-lb","dB/100 m":"dB/100 ft"},nh=.3048,th={"dB/100 m":nh},fs=3,ih=100,Jg={ft:2,in:4,"°F":1,"in-lb":1},Zg=1e-9,Qg=2,eb=6,tb="°F",ge="metric",gs=()=>ge,rh=s=>{ge=s},sh=s=>s;function le(s,e=ge){let t=e==="us"?Xg[s]:void 0;if(t===void 0)return{unit:s,shown:sh,sent:sh};if(s in th){let r=th[s];return{unit:t,shown:a=>a*r,sent:a=>a/r}}let[n,i]=[s,t].map(r=>Lt(r,s));return{unit:t,shown:r=>(r*n.factor+n.zero-i.zero)/i.factor,sent:r=>(r*i.factor+i.zero-n.zero)/n.factor}}var on=(s,e=ge)=>le(s,e).unit,sb=(s,e)=>Math.abs(s-Number(s.toFixed(e)))<=Zg*Math.max(Math.abs(s),1);function Ha(s,e,t=fs){let n=Jg[e];return n!==void 0&&sb(s,n)?Number(s.toFixed(n)):Math.abs(s)>=ih?Math.round(s):Number(s.toPrecision(Math.min(t,fs)))}function gt(s,e,t,n=ge){let i=le(e,n);return i.unit===e?k(s,t):k(Ha(i.shown(s),i.unit,t),eb)}var Pt=(s,e,t,n=ge)=>`${gt(s,e,t,n)} ${on(e,n)}`,be=(s,e,t=ge)=>Pt(s,"m",e,t);function nb(s,e=fs,t=ge){let n=t==="us"?nh:1;return Math.abs(s)<n?Wt(s,e,t):be(s,e,t)}var Wt=(s,e=fs,t=ge)=>Pt(s*1e3,"mm",e,t),bs=(s,e=fs,t=ge)=>Pt(s,"°C",e,t),ah=(s,e=fs,t=ge)=>Pt(s,"N·m",e,t);function X(s,e,t,n=ge){return typeof s=="string"||le(e,n).unit===e?P(s,e,t):e==="m"?nb(s,t,n):Pt(s,e,t,n)}var ib=/(?<![\w.])(-?\d+(?:\.\d+)?)(?: to (-?\d+(?:\.\d+)?))? (mm|cm|m|°C|N·m)(?![\p{L}\d_])(?: \([^()]*in-lb\))?/gu;function oh(s,e=ge){return e==="metric"?s:s.replace(ib,(t,n,i,r)=>{let a=[n,i].filter(Boolean),l=Math.max(Qg,...a.map(f=>f.replace(/[.-]|^0+|0+$/g,"").length)),{unit:d,shown:u}=le(r,e);return`${a.map(f=>{let y=u(Number(f));return String(Math.abs(y)>=ih||d===tb?Math.round(y):Number(y.toPrecision(l)))}).join(" to ")} ${d}`})}var rb=["cables","wire_lines"],ab={families:({id:s,name:e,also_called:t})=>({id:s,name:e,also_called:t}),cables:({id:s,name:e})=>({id:s,name:e}),wire_lines:({id:s,name:e})=>({id:s,name:e}),bands:({id:s,name:e,regions:t})=>({id:s,name:e,regions:Object.keys(t).sort()}),modes:s=>s},lh={families:"interfaces",cables:"cables",wire_lines:"wire_lines",bands:"bands",modes:"modes"};function ob(s,e,t){let n=new Map(e.map(i=>[i.id,i]));for(let i of t)for(let r of i[lh[s]]??[]){let{name:a,...l}=ab[s](r);n.set(r.id,{...l,name:`${a} (pack ${i.name})`})}return[...n.values()]}var lb=(s,e,t)=>rb.includes(s)?e.map(n=>({...n,name:oh(n.name,t)})):e;function dh(s,e,t="metric"){let n=e.map(({text:f})=>JSON.parse(f)),{conditions:i,installations:r,noise_environments:a,antenna_views:l,transmitters:d}=s,u=n.findLast(({default_powers_w:f})=>f?.length)?.default_powers_w,p=Object.keys(lh).map(f=>[f,lb(f,ob(f,s[f],n),t)]);return{...Object.fromEntries(p),conditions:i,installations:r,noise_environments:a,antenna_views:l,transmitters:d,powers_w:u??s.requests.matrix.powers_w.default}}var db="matrix",ch=s=>Object.assign({},...s),cb=s=>Object.fromEntries(Object.entries(s).map(([e,t])=>[e,t.default])),Ri=12,ub=3,hh=6,hb=s=>String(s).replace(/\D|^[0.-]+/g,"").length>=hh;function uh(s,e){if(s===0)return"0";let t=10**Math.min(Math.floor(Math.log10(Math.abs(s)))-ub+1,0);return k(Number((e(Number((s/t).toPrecision(Ri)))*t).toPrecision(Ri)),6)}var zi=class{isPacked;units;views;lists;fields;first;words;constructor(e,t,n,i="metric"){this.isPacked=n.length>0,this.units=i,this.views=t.flatMap(({id:r})=>r??[]),this.lists=dh(e,n,i),this.fields=ch(t.map(({fields:r})=>r?.(e,this.lists))),this.first=Object.fromEntries(Object.entries(this.fields).map(([r,a])=>[r,cb(a)])),this.words=ch(t.map(({words:r})=>r?.(this.lists)))}wordsOf(e){return this.words[e]??this.words[e.split(".")[1]]}labelOf(e){return this.wordsOf(e)?.label}fieldOf(e){let[t,n=db]=e.split(".").reverse();return this.fields[n]?.[t]}valueOf(e,t){return e?.[t.split(".")[1]]??this.fieldOf(t).default}#e(e){return this.wordsOf(e).unit??this.fieldOf(e).unit??""}#t(e){return le(this.#e(e),this.units)}#s(e){return this.wordsOf(e).factor??1}unitOf(e){return this.#t(e).unit}isConverted(e){return this.#s(e)!==1||this.#n(e)}#n(e){return this.unitOf(e)!==this.#e(e)}sent(e,t){let n=this.#t(e).sent(t)*this.#s(e);return Number(n.toPrecision(this.#n(e)&&hb(t)?hh:Ri))}stepOf(e){let t=this.wordsOf(e).step??1;if(!this.#n(e))return t;let{shown:n}=this.#t(e);return 10**Math.floor(Math.log10(n(t)-n(0)))}emptyOf(e){return this.wordsOf(e).empty??"not given"}shown(e,t){let n=this.#i(e,t);return this.#n(e)?Ha(n,this.unitOf(e)):Number(n.toPrecision(Ri))}#i(e,t){return this.#t(e).shown(t/this.#s(e))}figure(e,t){let[n,i]=[this.unitOf(e),this.shown(e,t)];return n==="W"?P(i,n):`${k(i)} ${n}`.trim()}rangeOf(e){let t=this.fieldOf(e),{min:n,max:i}=t.type==="list"?t.items:t,r=this.#n(e),a=this.unitOf(e);if(r){let[f,y]=[uh(this.#i(e,n),Math.ceil),uh(this.#i(e,i),Math.floor)];return`${f} to ${y} ${a}`.trim()}let[l,d]=[n,i].map(f=>this.figure(e,f)),[,u=""]=/^\S+( .+)$/.exec(d)??[];return`${n===0||u&&l.endsWith(u)?l.split(" ")[0]:l} to ${d}`}optionsOf(e){let{options:t,entries:n}=this.wordsOf(e);return n?n.map(({id:i,name:r})=>[i,r]):Object.entries(t??{})}nameOf(e,t){return(this.wordsOf(e).named?.map(i=>[i.id,i.name])??this.optionsOf(e)).find(([i])=>i===t)?.[1]}namesOf(e){return this.wordsOf(e).named?.map(n=>n.name)??this.optionsOf(e).filter(([n])=>n!=="").map(([,n])=>n)}spoken(e,t){let{named:n,options:i}=this.wordsOf(e);return t===null?i?.[""]??this.emptyOf(e):e.endsWith("added_sealing")?t?"yes":"no":n?t.map(r=>this.nameOf(e,r)??r).join(", "):Array.isArray(t)?t.map(r=>this.figure(e,r)).join(", "):typeof t=="number"&&!i?this.figure(e,t):this.nameOf(e,String(t))??String(t)}};function It(s,{lists:e}){let t=new Map(e.bands.map(n=>[n.id,n]));return s.bands.filter(n=>t.get(n)?.regions.includes(String(s.region))??!0)}var Fa=matchMedia("(min-width: 1280px)"),mh=["beforeprint","afterprint"];function mb(){let s=document.activeElement;for(;s?.shadowRoot?.activeElement;)s=s.shadowRoot.activeElement;return s}var Ua=class extends b({heading:{type:String}}){static styles=[_,g`
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
    `];constructor(){super(),this.heading="",this._printing=!1,this._placed=()=>this._place(),this._printed=({type:e})=>{this._printing=e==="beforeprint",this._place()},this._escaped=e=>{e.key==="Escape"&&this.heading&&!e.defaultPrevented&&this._close(e)}}connectedCallback(){super.connectedCallback(),Fa.addEventListener("change",this._placed);for(let e of mh)window.addEventListener(e,this._printed);window.addEventListener("keydown",this._escaped)}disconnectedCallback(){super.disconnectedCallback(),Fa.removeEventListener("change",this._placed);for(let e of mh)window.removeEventListener(e,this._printed);window.removeEventListener("keydown",this._escaped)}render(){return o`<dialog aria-labelledby="heading" @cancel=${this._close}>
      <div class="head">
        <h2 id="heading" tabindex="-1">${this.heading}</h2>
        <button id="close" @click=${this._close}>Close</button>
      </div>
      <div class="body" tabindex="0" role="group" aria-labelledby="heading"><slot></slot></div>
    </dialog>`}updated(e){if(e.has("heading")){if(this.heading==="")return this._closed();e.get("heading")||(this._opener=mb()),this._place(),N(this.renderRoot,".body").scrollTop=0,N(this.renderRoot,"h2").focus()}}get _dialog(){return N(this.renderRoot,"dialog")}_place(){if(this.heading==="")return;let e=Fa.matches||this._printing;this._dialog.open&&this._beside===e||(this._beside=e,this._dialog.close(),this._beside?this._dialog.show():this._dialog.showModal())}_closed(){this._dialog.close(),this._opener?.isConnected&&this._opener.focus(),this._opener=void 0}_close(e){e.preventDefault(),this.dispatchEvent(new CustomEvent("jw-close",{bubbles:!0,composed:!0}))}};customElements.define("jw-sheet",Ua);var V=class extends b({name:{type:String},value:m(c),error:{type:String}},j){static styles=[_,g`
      :host { min-width: 0; }
      label, legend { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; padding: 0; }
      .under {
        display: block; min-height: 1.35em; margin-top: 2px; font-size: 0.75rem; line-height: 1.35; color: var(--soft);
      }
      .under.error { color: var(--alarm); font-weight: 600; }
    `];constructor(){super(),this.error=""}get label(){return this.vocabulary.labelOf(this.name)}under(e){let{problem:t}=this;return o`<span class=${t?"under error":"under"} id="under" role=${t?"alert":"note"}
      >${t||e}</span>`}get problem(){return this._refusedValue===JSON.stringify(this.value)?this.error:""}willUpdate(e){e.has("error")&&(this._refusedValue=JSON.stringify(this.value))}get invalid(){return this.problem?"true":"false"}get field(){return this.vocabulary.fieldOf(this.name)}change(e,t=!1){let n={changes:{[this.name]:e},live:t};this.dispatchEvent(new CustomEvent("jw-change",{detail:n,bubbles:!0,composed:!0}))}};var Da=class extends b({hint:{type:String}},V){#e=new xe(this,{context:Qs});constructor(){super(),this.hint=""}render(){return o`<label for=${this.name}>${this.label}</label>
      <select id=${this.name} aria-invalid=${this.invalid} aria-describedby="under" @change=${this._chosen}>
        ${this._options.map(([e,t])=>o`<option value=${e} .selected=${e===String(this.value??"")}>${t}</option>`)}
      </select>
      ${this.under(this.hint)}`}get _options(){let e=this._inOrder(this.vocabulary.optionsOf(this.name)),t=String(this.value??"");return e.some(([n])=>n===t)?e:[...e,[t,t||this.vocabulary.emptyOf(this.name)]]}_inOrder(e){let t=this.name.split(".").at(-1)==="cable"?this.#e.value?.present.cables??[]:[],n=([i])=>i===""?0:t.includes(i)?1:2;return t.length>0?e.toSorted((i,r)=>n(i)-n(r)):e}_chosen(e){let{value:t}=e.target;t===""?this.change(null):this.change(this.field.type==="number"?Number(t):t)}};customElements.define("jw-choice-field",Da);var Ga=class extends V{static styles=[...V.styles,g`
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
`).filter(t=>/^\s*[\d.+-]/.test(t)).length} rows of numbers are in the line; another file takes their place`}async _picked(e){let[t]=e.target.files;t&&this.change(await t.text())}};customElements.define("jw-file-field",Ga);var fh=[{decimal:".",group:","},{decimal:",",group:"."}],gh=[...fh.map(s=>({marks:s,between:/[\s;]+|,\s+|,$/})),{marks:{decimal:".",group:""},between:/[\s;,]+/}],pb=6,fb=15,gb=12,bb="MHz",_b=/^([+-]?) ?((?:\d[\d.,' ]*[\d.,]|\d|[.,]\d+)(?:e[+-]?\d+)?) ?([^\d\s].*)?$/i,wb=s=>s.trim().replace(/\s+/g," ").replace(/[−–\u2010\u2011]/g,"-").replace(/[’‘′]/g,"'").replace(/[″“”]/g,'"').replaceAll("μ","µ").replaceAll("Ω","Ω").replace(/[º˚]/g,"°");function yb(s,{decimal:e,group:t}){let[n,i="0"]=s.toLowerCase().split("e"),[r,a="",...l]=n.split(e),[,d=""]=/^[1-9]\d{0,2}([.,' ])/.exec(r)??[],[u,...p]=d===""?[r]:r.split(d);if(!(d===""?/^\d*$/.test(r):[t,"'"," "].includes(d)&&p.every(w=>/^\d{3}$/.test(w)))||l.length>0||!/^\d*$/.test(a))return;let y=+`${[u,...p].join("")}.${a}e${i}`;return Number.isFinite(y)?y:void 0}var bh=(s,e)=>Number(s.toPrecision(e));function xb(s,e,t,n){if(t.name===n.name)return s;let i=e.replace(/e.*/i,"").replace(/\D|^[^1-9]+/g,"").length,r=Math.min(Math.max(i,pb),fb);return bh((s*t.factor+t.zero-n.zero)/n.factor,r)}var ph=(s,e)=>`${s} ${e}`.trim();function Ka(s,e,t){let[,n,i,r=""]=_b.exec(wb(s))??[],[a,l]=[Lt(r,e),Lt("",e)];if(i===void 0||!a||!l)return;let u=a.name===bb&&t.group==="."&&/^\d+\.\d{3}$/.test(i)?void 0:yb(i,t);if(u===void 0)return;let p=n==="-"&&u!==0?-u:u,f=xb(p,i,a,l),y=ph(p,a.name);return{value:f,words:y,converted:a.name===l.name?"":`${y} is ${ph(f,e)}`}}function Va(s){let e=s.filter(t=>t!==void 0);return[...new Map(e.map(t=>[JSON.stringify(t.value),t])).values()]}var Bt=(s,e="")=>Va(fh.map(t=>Ka(s,e,t)));function _h(s,e=""){let t=s.trim().replace(/(\d[.,]?)\s+(?=[^\d\s.,;+−–-])/g,"$1");return Va(gh.map(({marks:n,between:i})=>{let r=t.split(i).filter(Boolean),a=r.map(d=>Ka(d,e,n)).filter(d=>d!==void 0);if(a.length<r.length)return;let l=a.map(d=>d.converted).filter(Boolean);return{value:a.map(d=>d.value),words:a.map(d=>d.words).join(" and "),converted:l.join(", ")}}))}function Ya(s,e){let t=Va(gh.map(({marks:i,between:r})=>{let a=s.map(d=>d.split(r).map(u=>Ka(u,"",i)?.value));return a.every(d=>d.length===e&&!d.includes(void 0))?{value:a,words:"",converted:""}:void 0})),n=s.findIndex((i,r)=>new Set(t.map(({value:a})=>String(a[r]))).size>1);return t.map(i=>({...i,words:i.value[n]?.join("  ")??""}))}function Ni(s,e,t,n=""){let i=eh(n),r=n===""?", without a unit":i.length>0?`, also in ${i.join(", ")}`:"";return`${s} is ${e.trim()===""?"empty":`“${e.trim()}”`}; allowed: ${t}${r}.`}var Li=(s,e,t)=>`${s} is “${e.trim()}”: is that ${t.map(({words:n})=>n).join(" or ")}?`;function Pi(s){let e=String(bh(s,gb));return/^-?[1-9]\d{0,2}\.\d{3}$/.test(e)?`${e}0`:e}var Wi=g`
  .readings { display: flex; flex-wrap: wrap; gap: 6px; margin-top: 4px; }
`,Ii=(s,e,t)=>o`<div class="readings" role="group" aria-label="${s} is">
    ${e.map(n=>o`<button type="button" @click=${()=>t(n)}>${n.words}</button>`)}
  </div>`;var Ht=class extends b({_readings:$(c),_refused:$(c),_converted:$(c)},V){static styles=[...V.styles,Wi];constructor(){super(),this._taken="",this.forget()}willUpdate(e){if(super.willUpdate(e),!e.has("value"))return;let[t,n]=[e.get("value"),this.value].map(i=>JSON.stringify(i));t!==n&&n!==this._taken&&this.forget()}get problem(){return this._refused||super.problem}get unit(){return this.vocabulary.unitOf(this.name)}textOf(e){return""}read(e,t,n){this.forget(),t.length===1?this._choose(t[0]):t.length===0?this._refused=Ni(this.label,e,n,this.unit):(this._readings=t,this._refused=Li(this.label,e,t))}take(e){this._taken=JSON.stringify(e),this.input.value=this.textOf(e),this.change(e)}forget(){this._readings=[],this._refused="",this._converted=""}under(e){return o`${super.under(this._converted?`${this._converted}.`:e)}
      ${this._readings.length>0?Ii(this.label,this._readings,this._chosen):h}`}sent(e){return this.vocabulary.sent(this.name,e)}get input(){return N(this.renderRoot,'input[type="text"]')}_chosen=e=>{this.shadowRoot?.activeElement?.matches(":focus-visible")&&this.input.focus(),this.forget(),this._choose(e)};_choose({value:e,converted:t}){this._converted=t,this.take(Array.isArray(e)?this.gathered(e.map(n=>this.sent(n))):this.sent(e))}gathered(e){return e}};var Xa=1e3,wh={ArrowUp:1,ArrowDown:-1},yh=s=>s===null||s==="",Ja=class extends Ht{static styles=[...Ht.styles,g`
      .row { display: flex; gap: 10px; align-items: center; }
      input[type='range'] { flex: 1 1 70px; min-width: 60px; height: var(--target); margin: 0; }
      .row input[type='text'] { flex: 0 1 5.2rem; min-width: 4rem; padding-right: 2px; }
      .row input[type='text']:only-child { flex: 1 1 auto; }
    `];render(){let{min:e,max:t}=this._range,n=r=>this.vocabulary.shown(this.name,r),i=!yh(this.value)&&!this.problem;return o`<label for=${this.name}>${this.label}</label>
      <div class="row">
        ${this.vocabulary.wordsOf(this.name).slider?this._slider():h}
        <input id=${this.name} type="text" inputmode=${e<0?"text":"decimal"} autocomplete="off"
          spellcheck="false" role="spinbutton" aria-valuemin=${n(e)} aria-valuemax=${n(t)}
          aria-valuenow=${i?n(this.value):h} .value=${this.textOf(this.value)}
          aria-invalid=${this.invalid} aria-describedby="under"
          placeholder=${this.field.nullable?this.vocabulary.emptyOf(this.name):""} @change=${this._typed}
          @keydown=${this._stepped}>
      </div>
      ${this.under(this.vocabulary.rangeOf(this.name))}`}textOf(e){return yh(e)?"":String(this.vocabulary.shown(this.name,e))}_slider(){return o`<input type="range" min="0" max=${Xa} step="1" .value=${String(this._position())}
      aria-label="${this.label}, slider" aria-valuetext=${String(this.vocabulary.shown(this.name,this.value))}
      @input=${e=>this._slid(e,!0)} @change=${e=>this._slid(e,!1)}>`}get _logarithmic(){return this.vocabulary.wordsOf(this.name).slider==="logarithmic"}get _range(){return this.field}get _step(){return this.vocabulary.stepOf(this.name)}_position(){let{min:e,max:t}=this._range,n=Math.min(Math.max(this.value,e),t),i=this._logarithmic?Math.log(n/e)/Math.log(t/e):(n-e)/(t-e);return Math.round(i*Xa)}_slid(e,t){let{min:n,max:i}=this._range,r=Number(e.target.value)/Xa,a=this._logarithmic?n*(i/n)**r:n+(i-n)*r;this.forget(),this.change(this.sent(Math.round(this.vocabulary.shown(this.name,a)/this._step)*this._step),t)}_typed({target:{value:e}}){e===this.textOf(this.value)?this.forget():e.trim()===""&&this.field.nullable?(this.forget(),this.take(null)):this.read(e,Bt(e,this.unit),this.vocabulary.rangeOf(this.name))}get _standing(){let e=this.input.value;if(e.trim()==="")return 0;if(e===this.textOf(this.value))return this.value;let t=Bt(e,this.unit);return t.length===1?this.sent(t[0].value):void 0}_stepped(e){let{key:t,altKey:n,ctrlKey:i,metaKey:r,shiftKey:a}=e;if(!(t in wh)||n||i||r||a)return;e.preventDefault();let l=this._standing;if(l===void 0)return;let{min:d,max:u}=this._range,p=this.sent(this.vocabulary.shown(this.name,l)+wh[t]*this._step);this.forget(),this.take(Math.min(Math.max(p,d),u))}};customElements.define("jw-number-field",Ja);var Za=class extends V{static styles=[...V.styles,g`
      label { display: flex; gap: 10px; align-items: center; min-height: var(--target); margin: 1.2rem 0 0; }
      input { width: 22px; height: 22px; margin: 0; }
    `];render(){return o`<label>
        <input id=${this.name} type="checkbox" .checked=${this.value} aria-invalid=${this.invalid}
          @change=${e=>this.change(e.target.checked)}>
        ${this.label}
      </label>
      ${this.under("")}`}};customElements.define("jw-switch-field",Za);var Qa=class extends V{render(){return o`<label for=${this.name}>${this.label}</label>
      <input id=${this.name} type="text" autocomplete="off" maxlength=${this.field.longest} .value=${this.value}
        aria-invalid=${this.invalid} aria-describedby="under"
        @change=${e=>this.change(e.target.value.trim())}>
      ${this.under("")}`}};customElements.define("jw-text-field",Qa);function C(s,e,t,n=""){let{type:i}=s.fieldOf(e),{options:r,entries:a}=s.wordsOf(e);return e.endsWith(".touchstone")?o`<jw-file-field name=${e} .value=${t} .error=${n}></jw-file-field>`:i==="boolean"?o`<jw-switch-field name=${e} .value=${t} .error=${n}></jw-switch-field>`:i==="choice"||r||a?o`<jw-choice-field name=${e} .value=${t} .error=${n}></jw-choice-field>`:i==="number"?o`<jw-number-field name=${e} .value=${t} .error=${n}></jw-number-field>`:o`<jw-text-field name=${e} .value=${t} .error=${n}></jw-text-field>`}var I=s=>Object.fromEntries(Object.entries(s.detail.changes).map(([e,t])=>[e.split(".").at(-1),t]));var eo=class extends b({choices:m(c),sets:m(c),of:{type:String},hint:{type:String}},V){static styles=[...V.styles,g`
      fieldset { margin: 0; padding: 0; border: 0; min-width: 0; }
      div { display: flex; flex-wrap: wrap; gap: 4px; }
      button { padding: 0 10px; }
      .set { border-style: dashed; }
    `];constructor(){super(),this.of="",this.hint=""}render(){return o`<fieldset id=${this.name} aria-describedby="under">
      <legend>${this.label}${this.of}</legend>
      <div>
        ${this.choices.filter(({hidden:e})=>!e).map(({id:e,name:t})=>o`<button value=${e} aria-pressed=${this._chosen.includes(e)}
                @click=${this._toggle}>${t}</button>`)}
        ${this.sets.map(e=>o`<button class="set" aria-pressed=${e.value===null?this.value===null:h}
            @click=${()=>this.change(e.value)}>${e.words}</button>`)}
      </div>
      ${this.under(this.hint)}
    </fieldset>`}get _chosen(){return this.value??[]}_toggle(e){let t=e.currentTarget.value,n=new Set(this._chosen);n.delete(t)||n.add(t),n.size>0?this.change(this.choices.map(i=>i.id).filter(i=>n.has(i))):this.sets.some(i=>i.value===null)?this.change(null):this.sets.some(i=>i.value?.length===0)&&this.change([])}};customElements.define("jw-toggles-field",eo);var bt={rigs:"rig",antennas:"antenna"},to={rigs:yu,antennas:xu},$b={rigs:{name:"",power_w:100},antennas:{name:"",load:{kind:"vswr",vswr:1.5}},gear:{name:"",family:"n",gender:"jack",highest_frequency_hz:54e6,power_w:100}},vb=s=>Object.fromEntries(Object.entries(s).filter(([,e])=>e!==null)),xh=(s,{settings:e,...t})=>({...s,...t,settings:{...s.settings,...e}}),Bi=(s,e)=>s[e].length>=$i[e];function Hi(s,e,t=$b[e]){let n=[...s[e],t],i={[e]:n};return e in bt&&s[bt[e]]===-1?xh(i,to[e]({...s,...i},n.length-1)):i}function $h(s,e,t){let n={[e]:s[e].toSpliced(t,1)};if(!(e in bt))return n;let i=s[bt[e]];return i===t?{...n,[bt[e]]:-1}:{...n,[bt[e]]:i>t?i-1:i}}function vh(s,e,t,n){let i={[e]:s[e].map((l,d)=>d===t?vb({...l,...n}):l)},r="power_w"in n||"load"in n,a=e in bt&&s[bt[e]]===t;return r&&a?xh(i,to[e]({...s,...i},t)):i}var Fi=(s,e,t)=>to[e](s,t);function so({address:s,settings:e,units:t},n={}){let i=Object.fromEntries(Object.keys(e).map(r=>[r,void 0]));return{...pe,address:s,units:t,...n,settings:{...i,...n.settings}}}var no=[{id:"club_hf",name:"Club station HF",story:"A contest club with a kilowatt amplifier, digital weekends, masts in the weather.",station:{name:"Club station HF",rigs:[{name:"Transceiver",power_w:100,behaviour:"transceiver",family:"uhf",gender:"jack"},{name:"Amplifier",power_w:1e3,behaviour:"valve_amplifier",family:"uhf",gender:"jack"}],rig:1,antennas:[{name:"Beam",load:{kind:"vswr",vswr:2}}],antenna:0,gear:[{name:"Amplifier",family:"uhf",gender:"jack",highest_frequency_hz:3e7,power_w:1e3},{name:"Tuner",family:"uhf",gender:"jack",highest_frequency_hz:3e7,power_w:1500},{name:"Dummy load",family:"n",gender:"jack",highest_frequency_hz:45e7,power_w:1e3},{name:"Feed line",family:"n",gender:"plug",highest_frequency_hz:3e7,power_w:1e3}],cables:["rg_213"],settings:{bands:["160m","80m","60m","40m","30m","20m","17m","15m","12m","10m"],power_w:1e3,mode:"rtty",vswr:2,exposure:"exposed",added_sealing:!0,matings_per_year:20,service_life_years:15,ambient_temperature_c:35,solar_irradiance_w_per_m2:800}}},{id:"vhf_uhf",name:"2 m / 70 cm",story:"A repeater-style FM station in a car and at home, long overs.",station:{name:"2 m / 70 cm",rigs:[{name:"FM transceiver",power_w:50,behaviour:"transceiver",family:"uhf",gender:"jack"}],rig:0,antennas:[{name:"Vertical",load:{kind:"vswr",vswr:1.5}}],antenna:0,gear:[{name:"FM transceiver",family:"uhf",gender:"jack",highest_frequency_hz:45e7,power_w:50},{name:"Handheld",family:"sma",gender:"plug",highest_frequency_hz:45e7,power_w:5},{name:"Vertical",family:"n",gender:"jack",highest_frequency_hz:45e7,power_w:50}],cables:["rg_58"],settings:{bands:["6m","2m","70cm","23cm"],band:"2m",power_w:50,mode:"fm",vibration:"vehicle",exposure:"sheltered",ambient_temperature_c:50,matings_per_year:50}}},{id:"microwave_bench",name:"23 cm / 3 cm portable bench",story:"Hilltop microwave gear on a trestle table, plugged and unplugged on every outing.",station:{name:"23 cm / 3 cm portable bench",rigs:[{name:"Transverter",power_w:5,behaviour:"keeps_forward",family:"sma",gender:"jack"}],rig:0,antennas:[{name:"Dish",load:{kind:"vswr",vswr:1.3}}],antenna:0,gear:[{name:"Transverter",family:"sma",gender:"jack",highest_frequency_hz:105e8,power_w:5},{name:"Dish",family:"n",gender:"jack",highest_frequency_hz:105e8,power_w:5},{name:"Power meter",family:"n",gender:"plug",highest_frequency_hz:105e8,power_w:1}],settings:{bands:["70cm","23cm","13cm","5cm","3cm"],band:"23cm",power_w:5,mode:"cw",vswr:1.3,exposure:"sheltered",altitude_m:1500,ambient_temperature_c:25,matings_per_year:150,condition:"worn",return_loss_asked_db:16}}}];var ue=g`
  .fields {
    display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: start;
  }
  .wide { grid-column: 1 / -1; }
  details { border-top: 1px solid var(--line); }
  summary { cursor: pointer; min-height: var(--target); align-content: center; font-weight: 600; font-size: 0.92rem; }
  summary small { font-weight: 400; color: var(--soft); }
  @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
  @media (max-width: 350px) { .fields { grid-template-columns: minmax(0, 1fr); } }
`,Ne=g`
  main { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; padding: 10px 8px 40px; align-items: start; }
  .bar { display: flex; flex-wrap: wrap; gap: 6px; align-items: end; }
  .bar button { font-size: 0.85rem; padding: 0 10px; }
  .trouble {
    padding: 10px 14px; background: var(--alarm-wash); border: 1px solid var(--alarm); border-radius: var(--round);
  }
  .waiting { min-height: 60vh; }
  .waiting.empty { min-height: 0; }
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
`;var T=g`
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
`,_t=g`
  .pick {
    position: relative; display: grid; place-items: center; min-height: var(--target); padding: 0 10px;
    font-size: 0.85rem; border: 1px solid var(--edge); border-radius: var(--round); background: var(--card);
    cursor: pointer;
  }
  .pick:hover { border-color: var(--accent); }
  .pick:focus-within { outline: 3px solid var(--accent); outline-offset: 2px; }
  .pick input[type='file'] { position: absolute; inset: 0; width: 100%; height: 100%; opacity: 0; cursor: pointer; }
`,kh=g`
  main { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; padding: 10px 8px 40px; }
  .trouble {
    display: flex; gap: 12px; align-items: center; padding: 4px 4px 4px 14px;
    background: var(--alarm-wash); border: 1px solid var(--alarm); border-radius: var(--round);
  }
  .onpaper { display: none; }
  .waiting { min-height: 60vh; }
  .waiting.empty { min-height: 0; }
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
`;function Ui(s,e,t){let{type:n,min:i,max:r}=s.fieldOf(e);return n!=="number"||typeof t!="number"||t>=i&&t<=r?"":`${s.labelOf(e)} is ${s.spoken(e,t)}; allowed: ${s.rangeOf(e)}.`}var io=class extends b({list:{type:String},items:m(c),used:m(c),one:{type:String},full:{type:Boolean},fieldsOf:m(c),wordsOf:m(c),_open:$(c),_refused:$(c)},j){static styles=[_,g`
      ul { list-style: none; padding: 0; display: grid; gap: 6px; }
      li { background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      .row { display: grid; grid-template-columns: auto minmax(0, 1fr); align-items: center; }
      .row:not(:has(.use)) { grid-template-columns: minmax(0, 1fr); }
      .use { display: grid; place-items: center; min-width: var(--target); min-height: 48px; cursor: pointer; }
      .use input { width: 20px; height: 20px; margin: 0; accent-color: var(--accent); }
      .toggle {
        display: block; width: 100%; min-height: 48px; padding: 3px 10px; border: 0; background: none; color: inherit;
        text-align: left;
      }
      .use + .toggle { padding-left: 0; }
      .toggle[aria-expanded='true'] { background: none; color: inherit; }
      .name { display: block; font-weight: 600; overflow-wrap: anywhere; }
      .more { display: block; color: var(--soft); font-size: 0.8rem; line-height: 1.25; }
      .form { padding: 6px 12px 10px; background: var(--sunk); border-radius: 0 0 var(--round) var(--round); }
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: start;
      }
      .form button, .add { font-size: 0.85rem; }
      .add { margin-top: 8px; }
      @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
    `];constructor(){super(),this._open=-1}render(){return o`${this.items.length>0?o`<ul>${this.items.map((e,t)=>this._row(e,t))}</ul>`:h}
      <button class="add" ?disabled=${this.full} @click=${this._add}>Add ${this.one}</button>`}_row(e,t){let[n,i]=this.wordsOf(e),r=t===this._open,a=()=>x(this,"jw-station-edit",{what:"use",list:this.list,at:t});return o`<li>
      <div class="row">
        ${this.used===void 0?h:o`<label class="use"><input type="checkbox" .checked=${t===this.used}
                aria-label="Use ${n}" @change=${a}></label>`}
        <button class="toggle" aria-expanded=${r} @click=${()=>this._toggle(t)}>
          <span class="name">${n}</span>
          <span class="more">${t===this.used?`in use, ${i}`:i}</span>
        </button>
      </div>
      ${r?this._form(e,t):h}
    </li>`}_form(e,t){let{name:n,message:i=""}=this._refused??{},r=l=>n===l?i:"",a=()=>{this._open=-1,x(this,"jw-station-edit",{what:"remove",list:this.list,at:t})};return o`<div class="form">
      <div class="fields" @jw-change=${l=>this._changed(l,t)}>
        ${this.fieldsOf(e).map(([l,d])=>C(this.vocabulary,l,d,r(l)))}
      </div>
      <button class="remove" @click=${a}>Remove</button>
    </div>`}_toggle(e){this._open=this._open===e?-1:e,this._refused=void 0}_add(){this._open=this.items.length,x(this,"jw-station-edit",{what:"add",list:this.list})}_changed(e,t){if(e.stopPropagation(),e.detail.live)return;let[[n,i]]=Object.entries(e.detail.changes),r=Ui(this.vocabulary,n,i);this._refused=r?{name:n,message:r}:void 0,r||x(this,"jw-station-edit",{what:"set",list:this.list,at:t,fields:I(e)})}};customElements.define("jw-station-list",io);var Ft="station",kb=["mode","power_w","power_is","vswr","band","frequency_hz","region","bands"],Sb=["exposure","added_sealing","vibration","ambient_temperature_c","solar_irradiance_w_per_m2","altitude_m","matings_per_year","service_life_years","condition"],Sh=["transmit_share","on_time_s","off_time_s","system_impedance_ohm","return_loss_asked_db","cable","cable_diameter_m","added_resistance_ohm"],jb=142e5,Eb={resonant:"known by its resonance",impedance:"known by its impedance",table:"known by a table of impedances",measured:"known by a measured file",dummy:"a dummy load"},Ob=[{words:"not said",value:null}],Tb=[{words:"none",value:[]}],ro=class extends $e{constructor(){super(),this._address=""}static styles=[_,ue,T,g`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; }
      .row { display: flex; flex-wrap: wrap; gap: 6px; align-items: center; }
      .row button { font-size: 0.85rem; padding: 0 11px; }
      .chips button { border-radius: 99px; }
      .panel { background: none; }
      .lists { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; }
      .double { grid-column: 1 / -1; }
      .wide { grid-column: 1 / -1; }
      h3 { margin: 0 0 6px; }
      details { border-top: 0; }
      .panel p { margin-top: 6px; }
    `];render(){let{station:e}=this,t=no.find(({station:{name:n,settings:i}})=>Rb(e,n,i));return o`<div class="row">
        <jw-undo ?undo=${this.stationStore.canUndo(Ft)} ?redo=${this.stationStore.canRedo(Ft)}
          @jw-turn=${({detail:n})=>this.stationStore.turn(n.way,Ft)}></jw-undo>
      </div>
      <p class="quiet">Every view asks about this station. This browser keeps it, and every link holds it.</p>
      <div class="row chips" role="group" aria-label="Example stations">
        <span class="quiet">Example stations</span>
        ${no.map(n=>o`<button data-example=${n.id} aria-pressed=${n===t}
            @click=${()=>this._change(so(this.station,n.station))}>${n.name}</button>`)}
        <button id="empty" @click=${()=>this._change(so(this.station))}>Start empty</button>
      </div>
      ${t?o`<p class="quiet">${t.story} Invented.</p>`:h}
      <section class="panel" @jw-change=${this._told}>
        <div class="fields">
          <div class="double">${C(this.vocabulary,"shack.name",e.name)}</div>
          ${C(this.vocabulary,"shack.units",e.units)}
        </div>
      </section>
      <div class="lists" @jw-station-edit=${this._edited}>${this._lists()}</div>
      <section class="panel" @jw-change=${this._set}>
        <h2>How it is used</h2>
        <div class="fields">${kb.map(n=>this._field(n))}</div>
      </section>
      <section class="panel" @jw-change=${this._set}>
        <h2>Where it stands</h2>
        <div class="fields">${Sb.map(n=>this._field(n))}</div>
        <details><summary>Rarely changed ${this._changedOf(Sh)}</summary>
          <div class="fields">${Sh.map(n=>this._field(n))}</div></details>
      </section>
      <section class="panel" @jw-change=${this._told}>
        <h2>Cables in use <small>offered first</small></h2>
        ${this._cables()}
      </section>
      <section class="panel" @jw-change=${this._told}>
        <h2>Links</h2>
        ${C(this.vocabulary,"shack.address",this._address||e.address,zt(this._address))}
        <p class="quiet">Where links and the codes on labels lead when this page is a file on your disk. Empty: where
          the page itself is.</p>
      </section>`}_lists(){let{antenna:e,antennas:t,gear:n,rig:i,rigs:r}=this.station,{families:a}=this.vocabulary.lists,l=({family:p,gender:f})=>[a.find(({id:y})=>y===p)?.name??p,f].join(" ").trim(),d=(p,f)=>y=>f.map(w=>[`${p}.${w}`,y[w]??null]),u=({name:p,power_w:f,family:y,gender:w})=>[p||"Transmitter",[A(f),l({family:y,gender:w})].filter(Boolean).join(", ")];return o`<section class="panel"><h2>Transmitters</h2>
        <jw-station-list list="rigs" one="a transmitter" .items=${r} .used=${i}
          ?full=${Bi(this.station,"rigs")} .fieldsOf=${d("rig",Ab)} .wordsOf=${u}></jw-station-list>
      </section>
      <section class="panel"><h2>Antennas</h2>
        <jw-station-list list="antennas" one="an antenna" .items=${t} .used=${e}
          ?full=${Bi(this.station,"antennas")} .fieldsOf=${Mb} .wordsOf=${Cb}></jw-station-list>
        <p class="quiet">One known by more than its SWR is described in a line, and kept here from there.</p>
      </section>
      <section class="panel"><h2>Gear <small>its ports; kits start from them</small></h2>
        <jw-station-list list="gear" one="a port" .items=${n} ?full=${Bi(this.station,"gear")}
          .fieldsOf=${d("port",qb)} .wordsOf=${p=>[p.name||l(p),`${l(p)}, up to ${O(p.highest_frequency_hz)}, ${A(p.power_w)}`]}></jw-station-list>
      </section>`}_cables(){let{cables:e}=this.vocabulary.lists,t=e.filter(({id:n})=>this.station.cables.includes(n)).map(({name:n})=>n);return o`<details><summary>${t.join(", ")||"none said"}</summary>
      <jw-toggles-field name="shack.cables" .choices=${e} .sets=${Tb}
        .value=${this.station.cables}></jw-toggles-field></details>`}_valueOf(e){return tn(this.station.settings,e,this.vocabulary.first.settings[e])}_changedOf(e){let t=e.filter(n=>n in this.station.settings).length;return t>0?o`<small>${t} set</small>`:h}_field(e){let t=`settings.${e}`,n=this._valueOf(e);if(e==="frequency_hz"&&this._valueOf("band")!==null)return h;if(e==="cable_diameter_m"&&this._valueOf("cable")!==null)return h;if(e==="bands"){let i=String(this._valueOf("region")),r=this.vocabulary.lists.bands.map(a=>({...a,hidden:!a.regions.includes(i)}));return o`<jw-toggles-field class="wide" name=${t} .choices=${r} .sets=${Ob}
        .value=${n}></jw-toggles-field>`}return C(this.vocabulary,t,n,Ui(this.vocabulary,t,n))}_change(e,t=!1){this.stationStore.change(Ft,e,void 0,t)}_set(e){e.stopPropagation();let t=I(e);"band"in t&&(t.frequency_hz=t.band===null?jb:null);let{first:n}=this.vocabulary,i=Object.entries(t).map(([r,a])=>[r,a===n.settings[r]?null:a]);this._change({settings:Object.fromEntries(i)},e.detail.live)}_told(e){e.stopPropagation();let t=I(e);this._address="address"in t&&zt(t.address)?t.address:"",this._address?this.requestUpdate():this._change(t)}_edited({detail:{what:e,list:t,at:n,fields:i}}){let{station:r}=this;switch(e){case"add":return this._change(Hi(r,t));case"remove":return this._change($h(r,t,n));case"use":return this._change(Fi(r,t,n===r[t==="rigs"?"rig":"antenna"]?-1:n))}let{vswr:a,...l}=i,d=a===void 0?{}:{load:{...r.antennas[n].load,vswr:a}};this._change(vh(r,t,n,{...l,...d}))}},Ab=["name","power_w","behaviour","family","gender"],qb=["name","family","gender","highest_frequency_hz","power_w","impedance_ohm"],Mb=({name:s,load:e})=>[["antenna.name",s],...e.kind==="vswr"?[["load_vswr.vswr",e.vswr]]:[]],Cb=({name:s,load:e})=>[s||"Antenna",Eb[e.kind]??`SWR ${k(e.vswr)}`],Rb=(s,e,t)=>s.name===e&&Object.entries(t).every(([n,i])=>JSON.stringify(s.settings[n])===JSON.stringify(i));customElements.define("jw-station-panel",ro);var jh=s=>{let e=[...s.querySelectorAll("*")].filter(({shadowRoot:t})=>t);return[s,...e.flatMap(({shadowRoot:t})=>jh(t))]},zb=()=>jh(document).some(s=>s.querySelector(":modal")),ln=class extends b({_view:$(c),_report:$(c),_copied:$(c)}){static styles=[_,g`
      dialog {
        position: fixed; inset: auto 12px 12px; z-index: 40; width: auto; max-width: 640px; margin: 0 auto;
        padding: 12px 14px; color: inherit; background: var(--alarm-wash); border: 1px solid var(--alarm);
        border-radius: var(--round); box-shadow: 0 6px 30px #0004;
      }
      .acts { display: flex; flex-wrap: wrap; gap: 8px; margin-top: 8px; }
      textarea { width: 100%; min-height: 8rem; margin-top: 8px; font: 0.8rem/1.4 ui-monospace, monospace; }
      @media print { :host { display: none; } }
    `];constructor(){super(),this._view="",this._report="",this._copied=""}async show(e,t){Object.assign(this,{_view:e,_report:t,_copied:""}),await this.updateComplete,!this._dialog.open&&(zb()?this._dialog.showModal():this._dialog.show())}get _dialog(){return N(this.renderRoot,"dialog")}render(){return o`<dialog role="alertdialog" aria-labelledby="fault">
      <p id="fault" role="alert">${this._view?`Something went wrong in ${this._view}. What you entered is kept; nothing was sent anywhere.`:""}</p>
      <div class="acts">
        <button id="again" @click=${this._again}>Try again</button>
        <button id="report" @click=${this._copy}>Copy a report</button>
        <button @click=${this._close}>Close</button>
      </div>
      <p class="quiet" role="status">${this._copied==="copied"?"Copied: version, view and fault.":""}</p>
      ${this._copied==="by hand"?o`<textarea readonly aria-label="Report to copy by hand" .value=${this._report}
              @focus=${({target:e})=>e.select()}></textarea>`:h}
    </dialog>`}async _copy(){try{await navigator.clipboard.writeText(this._report),this._copied="copied"}catch{this._copied="by hand"}}_again(){this._close(),x(this,"jw-again")}_close(){this._dialog.close(),this._view=""}};customElements.define("jw-fault",ln);var Nb=/\b(?:file|https?|blob|data):[^\s()]*?([^\s()/]*?)(?:[?#][^\s():]*)?(:\d+:\d+)?(?=[\s)]|$)/g,Lb=/"(?:[^"\\]|\\.)*"|“[^”]*”/g,Eh=s=>s.replace(Nb,"$1$2").replace(Lb,'"…"');function Oh(s,{version:e,view:t}){let n=Eh(`${s.name}: ${s.message}`).slice(0,300),r=(s.stack??"").split(`
`).filter(a=>/^\s*at |@/.test(a)&&!a.includes(s.message)).slice(0,12).map(a=>Eh(a).trim());return[`Jointwise ${e}`,`View: ${t}`,`Message: ${n}`,...r].join(`
`)}var ao=new Set,Th=new WeakSet,Pb=s=>!(s instanceof Error)||s.name==="AbortError";function Ah(s,e){let t=new ln,n=i=>{Pb(i)||Th.has(i)||(Th.add(i),!ao.has(i.message)&&(ao.add(i.message),t.show(e(),Oh(i,{version:z.version,view:e()}))))};t.addEventListener("jw-again",()=>{ao.clear(),s.drawAnew()}),window.addEventListener("error",({error:i})=>n(i)),window.addEventListener("unhandledrejection",({reason:i})=>n(i)),document.body.append(t)}var qh=(s,e)=>Object.fromEntries(Object.entries(e).filter(([,t])=>!s.includes(t))),Ze=s=>qh([null,void 0],s),Qe=s=>qh([null,void 0,""],s);var lo=["exposure","vibration","added_sealing"],oo=s=>Object.fromEntries(lo.map(e=>[e,s[e]])),Mh=(s,e)=>lo.every(t=>s[t]===e[t]);function dn(s,{installations:e}){let t=e.find(({id:n})=>n===s.installation);return t&&Mh(s,e[0])?{...s,...oo(t)}:s}function Ch(s,e,{installations:t}){if("installation"in s){let i=t.find(({id:r})=>r===s.installation);return i?{...oo(i),...s}:s}if(!lo.some(i=>i in s))return s;let n={...oo(dn(e,{installations:t})),...s};return Mh(n,t[0])?{...n,installation:t[0].id}:n}var Rh=({requests:{choose:s}})=>({choose:s});function zh(s,e){let{installation:t,...n}=dn(s,e.lists);return{...Ze(n),bands:It(s,e)}}var Di=(s,e)=>It(s,e).length+s.frequencies_hz.length===0?"Pick a band, or type a spot frequency.":"";var Nh=(s,e)=>JSON.stringify(s)===JSON.stringify(e),Gi=(s,e)=>Object.fromEntries(Object.entries(s).filter(([t])=>e(t))),Le=class extends b({_own:$(c)},mt){_begin(){this._own=this._firstOwn}get _first(){return this.vocabulary.first[this._name]}get _firstOwn(){return Gi(this._first,e=>this._ownNames.includes(e))}get _state(){return xi(this._own,this.station,this._first)}get _fragment(){let{views:e}=this.vocabulary,t=this._firstOwn;return this._name===e[0]?Re(this._own,t):uu(this._name,this._own,t)}_restore(e){let t=this._firstOwn,n=Gi(this.vocabulary.fields[this._name],a=>this._ownNames.includes(a)),{state:i,unknown:r}=this._readOwn(e,n,t);return Nh(i,this._own)||(this._own=i),{unknown:r}}_readOwn(e,t,n){return hu(e,t,n)}_change(e,t={}){let n=a=>this._ownNames.includes(a),i={...this._own,...Gi(e,n)},r=this._settings(Gi(e,a=>!n(a)),this._first);this._put(Nh(i,this._own)?this._own:i,Object.keys(r).length>0?{settings:r}:{},typeof t=="boolean"?{live:t}:t)}_reset(){let e=Object.keys(this._first).filter(i=>!this._ownNames.includes(i)),t=$u(this.station),n=Object.fromEntries(e.map(i=>[i,t[i]]));this._put(this._firstOwn,{settings:n})}};var co=class extends b({cautions:m(c),heading:{type:String}}){static styles=[_,g`
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
    </section>`}};customElements.define("jw-cautions",co);var de=s=>s?.field?.split(/[[.]/)[0]??"";var _e=(s,e)=>s.includes(e)?s:[...s,e].sort((t,n)=>t-n),cn=(s,e)=>s.reduce((t,n)=>Math.abs(n-e)<Math.abs(t-e)?n:t);var Wb=["use","bands","frequencies_hz","installation","port","largest_diameter_m","plan","power_w","margin_asked_db","dc_current_a","dc_voltage_v"],Ib=s=>s.low_hz===s.high_hz;function Bb(s,e,t){return s.port_binds?t.choices.find(({family:n})=>n===e.port):s}function Hb(s,{columns:e}){let t=e.reduce((n,i)=>i.high_hz>n.high_hz?i:n);return e.find(({name:n})=>n===s.binding_column)??t}var Fb=s=>Object.fromEntries(Object.entries(s).filter(([e])=>!Wb.includes(e)));function Lh(s,e,t,n,i=n.bands){let r=Bb(s,e,t),a=Hb(r,t),l=Ib(a)?{frequency_hz:a.high_hz,frequencies_hz:[a.high_hz]}:{band:a.id,bands:i.includes(a.id)?i:[...i,a.id]},d={power_w:t.power_w,powers_w:_e(n.powers_w,t.power_w)};return Re({...n,...Fb(e),...l,...d,family:r.family},n)}var Ub=s=>/[",\r\n]/.test(s)?`"${s.replaceAll('"','""')}"`:s,Db=s=>typeof s=="string"&&/^\s*[=+\-@]/.test(s)?`'${s}`:String(s??"");function wt(s,e){return[s.map(([n])=>n),...e.map(n=>s.map(([,i])=>Ub(Db(i(n)))))].map(n=>`${n.join(",")}\r
`).join("")}var Gb=[["family",s=>s.name],["passes",s=>s.passes],["rank",s=>s.rank],["margin_db",s=>s.margin_db],["margin_high_db",s=>s.margin_high_db],["undecided",s=>s.undecided],["set_by",s=>s.port_binds?"port":s.binding],["on",s=>s.port_binds?null:s.binding_column],["return_loss_db",s=>s.return_loss_db],["return_loss_high_db",s=>s.return_loss_high_db],["loss_db",s=>s.loss_db],["diameter_m",s=>s.diameter_m],["coupling",s=>s.coupling],["torque_nm",s=>s.torque_nm],["needs_adapter",s=>s.needs_adapter],["has_margin_asked",s=>s.has_margin_asked],["why",s=>s.reasons.join("; ")],["dc_stands_a",s=>s.dc_stands_a],["matings_needed",s=>s.wear.needed],["matings_good_for",s=>s.wear.good_for],["wears_out_after_years",s=>s.wear.runs_out_after_years],["stands",s=>s.weather.stands],["stands_sealed",s=>s.weather.stands_sealed],["from_pack",s=>s.pack],["missed",s=>s.rejections.map(({sentence:e})=>e).join(" ")]],Kb={diameter_m:["diameter_in",s=>gt(s.diameter_m*1e3,"mm",3)],torque_nm:["torque_in_lb",s=>gt(s.torque_nm,"N·m",3)]};function Ph(s){let e=gs()==="us",t=Gb.map(n=>e&&Kb[n[0]]||n);return wt(t,s.choices)}var uo=class extends b({zero:{type:String}},Ht){constructor(){super(),this.zero=""}render(){return o`<label for=${this.name}>${this.label}</label>
      <input id=${this.name} type="text" autocomplete="off" spellcheck="false" .value=${this.textOf(this.value)}
        aria-invalid=${this.invalid} aria-describedby="under" @change=${this._typed}>
      ${this.under(this._allowed)}`}get _allowed(){let e=this.zero?`; “${this.zero}” is 0`:"";return`${this.vocabulary.rangeOf(this.name)} each, spaces between${e}`}textOf(e){let t=n=>n===0&&this.zero?this.zero:Pi(this.vocabulary.shown(this.name,n));return e.map(t).join("  ")}gathered(e){return[...new Set(e)].sort((t,n)=>t-n)}_typed({target:{value:e}}){let t=e.split(/\b/).map(n=>n===this.zero?"0":n);this.read(e,_h(t.join(""),this.unit),this._allowed)}};customElements.define("jw-list-field",uo);var ho=[["carries","What it carries",["use","power_w","mode","vswr","margin_asked_db","dc_current_a","dc_voltage_v","bands","frequencies_hz"]],["sits","Place and weather",["installation","exposure","added_sealing","vibration","ambient_temperature_c","solar_irradiance_w_per_m2","altitude_m"]],["used","How it is used",["matings_per_year","service_life_years","condition"]],["meets","What it meets",["cable","cable_diameter_m","port","largest_diameter_m","system_impedance_ohm","return_loss_asked_db","region"]]],Vb="Where it sits sets weather, sealing and shaking together; each may be changed after it.",Yb=[{words:"none: spot frequencies only",value:[]}],Xb="(min-width: 1180px)",Jb=(s,e)=>s==="cable_diameter_m"&&e.cable!==null||["power_w","margin_asked_db"].includes(s)&&e.use==="receive"||s==="dc_voltage_v"&&e.dc_current_a===0,Zb=(s,e)=>JSON.stringify(s)===JSON.stringify(e),mo=class extends b({state:m(c),refusal:m(c),_open:$(c)},j){static styles=[_,ue,g`:host { padding: 12px; background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
    .plan { max-width: 420px; }`];constructor(){super(),this._open=new Set(matchMedia(Xb).matches?ho.map(([e])=>e):["carries"])}willUpdate(e){if(!e.has("refusal")||!this.refusal)return;let t=ho.find(([,,n])=>n.includes(de(this.refusal)));t&&(this._open=new Set([...this._open,t[0]]))}render(){return o`<div @jw-change=${this._changed}>
      <h2 class="unseen">Demands</h2>
      <div class="plan">${this._field("plan")}</div>
      ${ho.map(e=>this._group(e))}
    </div>`}_group([e,t,n]){let i=this._open.has(e),a=n.filter(l=>!Zb(this.state[l],this.vocabulary.first.choose[l])).map(l=>this.vocabulary.spoken(`choose.${l}`,this.state[l])).join(" · ");return o`<details data-group=${e} ?open=${i} @toggle=${l=>this._toggled(e,l.target.open)}>
      <summary>${t} ${a&&!i?o`<small>${a}</small>`:h}</summary>
      <div class="fields">${i?n.map(l=>this._field(l)):h}</div>
      ${i&&e==="sits"?o`<p class="quiet">${Vb}</p>`:h}
    </details>`}_field(e){let t=dn(this.state,this.vocabulary.lists);if(Jb(e,t))return h;let n=`choose.${e}`,{refusal:i}=this,a=i&&de(i)===e?i.message:"";if(e==="bands"){let l=this.vocabulary.lists.bands.map(d=>({...d,hidden:!d.regions.includes(String(t.region))}));return o`<jw-toggles-field class="wide" name=${n} .choices=${l} .sets=${Yb}
        .value=${t.bands} .error=${a||Di(t,this.vocabulary)}></jw-toggles-field>`}return e==="frequencies_hz"?o`<jw-list-field class="wide" name=${n} .value=${t.frequencies_hz}
        .error=${a}></jw-list-field>`:C(this.vocabulary,n,t[e],a)}_toggled(e,t){if(this._open.has(e)===t)return;let n=new Set(this._open);n.delete(e)||n.add(e),this._open=n}_changed(e){e.stopPropagation();let t=Ch(I(e),this.state,this.vocabulary.lists);x(this,"jw-choose-change",{changes:t,live:e.detail.live})}};customElements.define("jw-choose-form",mo);var Oe=[{from:-1/0,light:["#6e3f0e","#ffffff"],dark:["#6a3d10","#fff4e4"],print:["#c08a3c","#000000"]},{from:-20,light:["#bf8031","#1a1005"],dark:["#935f1d","#fffaf2"],print:["#dcb273","#000000"]},{from:-10,light:["#e6bd76","#1f1607"],dark:["#bb9148","#160f04"],print:["#efd6a9","#000000"]},{from:-3,light:["#f8e8c8","#2a2010"],dark:["#d9c79f","#1c160a"],print:["#faf0dc","#000000"]},{from:0,light:["#e4eff8","#10202e"],dark:["#c2d2df","#0c161f"],print:["#eef5fa","#000000"]},{from:3,light:["#b0d2ee","#0c1c2b"],dark:["#86adcf","#07121c"],print:["#d2e5f4","#000000"]},{from:10,light:["#69a6d8","#061523"],dark:["#3f76a8","#ffffff"],print:["#a8cdea","#000000"]},{from:20,light:["#1f5690","#ffffff"],dark:["#1f4c7b","#f0f7ff"],print:["#7bb0dc","#000000"]}];function B(s){return Oe.findLastIndex(e=>s>=e.from)}function Ki(s){let e=Oe[s].from,t=Oe[s+1]?.from,n=i=>`${i>0?"+":i<0?"−":""}${Math.abs(i)}`;return e===-1/0?`below ${n(t)}`:t===void 0?`${n(e)} and above`:`${n(e)} to ${n(t)}`}var W=[...Oe.keys(),"holds"].map(s=>`[data-step="${s}"]{background-color:var(--step-${s});color:var(--step-${s}-ink)}`).join(`
`);var se=s=>s?o` <span class="pack">from pack ${s}</span>`:h,po=s=>s?o` <span class="pack sign" title="From pack ${s}">◆<span class="unseen"> from pack ${s}</span></span>`:h;function Vi(s,e=[]){let[t,n]=s.split(".");return n===void 0?void 0:e.find(({id:i})=>i===t)?.name}var J=g`
  .pack {
    display: inline-block; max-width: 100%; padding: 0 7px; border: 1px dashed var(--accent); border-radius: 99px;
    color: var(--accent); font-size: 0.75rem; font-weight: 500; overflow-wrap: anywhere;
  }
  .pack.sign { padding: 0 2px; border: 0; font-size: 0.8em; }
`;var _s={contact:"Heat of the contact",cable:"Heat of the cable",voltage:"Voltage"},Yi={contact:"its contact",cable:"its cable",voltage:"voltage"};var Wh="match",Qb={te11:"TE11",cable_te11:"TE11",no_figures:"freq",receive_only:"rx only",no_heat_room:"hot",immersion:"wet",house:"house",match:"RL 8"},e_={customary_frequency:"f",weather:"w",vibration:"v",wear:"s",cable_fit:"c",cold:"t",match_doubt:"m"},fo="↓",Xi=s=>Qb[s.id]??s.name,un=s=>e_[s.id]??s.name[0],t_=[],s_=(s,e)=>e===0?t_:s.filter((t,n)=>e>>n&1);function yt(s,e,t,n){let i=s.refused_by[e][t][n],r=s.margin_db[e][t][n],[a,l]=s.return_loss_db[e][t];return{family:s.families[e],column:s.columns[t],power:s.powers_w[n],margin:r,high:s.margin_high_db[e][t][n],limit:s.limits[s.binding[e][t][n]],returnLoss:a,returnLossHigh:l,refusedBy:i===-1?void 0:s.gates[i],marks:s_(s.gates,s.marks[e][t][n]),undecided:s.undecided[e][t][n],lowerFromMemory:s.rating_below[e]&&r!==null,largest:s.largest_power_w[e][t]}}var n_=s=>Math.round(Number(s)),Ut=s=>`RL ${n_(s)}`;function et(s){return s.refusedBy?"refused":s.margin===null?"holds":B(s.margin)}var ws=s=>s.marks.map(un).join("")+(s.lowerFromMemory?fo:"");function Dt(s){return s.refusedBy&&s.refusedBy.id!==Wh?Xi(s.refusedBy):s.margin===null?Ut(s.returnLoss):E(s.margin)}function Ih(s,e){return s.refusedBy||e==="margin"?Dt(s):s.largest===null?"none":an(s.largest)}function Bh(s){let e=`${s.family.name}, ${s.column.name}, ${A(s.power)}`,t=s.marks.map(n=>`${n.name}: ${s.family.gate_reasons[n.id]}`);return[...i_(e,s),...t].join(". ")}function i_(s,e){let{refusedBy:t}=e,n=`${Ut(e.returnLoss)}, return loss in dB`;if(t?.id===Wh)return[`${s}: refused, ${n}, less than asked for`];if(t)return[`${s}: refused, ${Xi(t)}, ${t.name}`,e.family.gate_reasons[t.id]];if(e.margin===null)return[`${s}: ${n}; no power to bear`];let i=[`${s}: margin ${E(e.margin)} dB, limited by ${Yi[e.limit]} at ${O(e.column.high_hz)}`,`range ${E(e.margin)} to ${E(e.high)} dB`,e.largest===null?"no power holds":`holds up to ${an(e.largest)} watts`];return e.undecided&&i.push("Undecided: sources differ on which side of the limit it lies"),e.lowerFromMemory&&i.push("A power figure from memory is lower"),i}var go={indoor:"indoors only",sheltered:"damp, no rain",exposed:"weatherproof when mated",immersed:"under water"},r_=.01;function bo(s,e){if(s.rank===null)return"";let t=e.filter(({rank:n})=>n===s.rank).length>1;return`${s.rank}${t?"=":""}`}var Hh=({rejections:s})=>s.find(({hard:e})=>e);function Fh(s){return s.margin_db!==null?`${E(s.margin_db)} dB`:(Hh(s)?.demand??"match")==="match"?Ut(s.return_loss_db):"refused"}function Uh(s){return s.margin_db!==null?B(s.margin_db):Hh(s)?"refused":"holds"}function Dh(s){return s.margin_db===null?"":[s.margin_high_db===null?"":`up to ${E(s.margin_high_db)} dB`,s.undecided?"uncertain":""].filter(Boolean).join(", ")}function Gh(s){return s.margin_db===null?"":s.port_binds?"limited by the joint it plugs into":`limited by ${Yi[s.binding]} on ${s.binding_column}`}var Kh=s=>`${s<r_?k(s,2):s.toFixed(3)} dB`,Vh=s=>Wt(s);function Yh({coupling:s,torque_nm:e,by_hand:t}){return t?`${s}, by hand`:e>0?`${s}, ${ah(e)}`:s}function Xh({needed:s,good_for:e,runs_out_after_years:t}){let n=t===null?"never opened":`runs out after ${k(t,3)} years`;return`${k(s,4)} matings of ${k(e,5)}; ${n}`}function Jh({stands:s,stands_sealed:e}){return s===e?go[s]:`${go[s]}; weatherproof when taped`}function Zh({reasons:s}){let e=s.join("; ");return e.charAt(0).toUpperCase()+e.slice(1)}var Qh=({weather:s})=>Object.keys(go).indexOf(s.stands);function e0(s,e){let t=e.choices.find(({family:i})=>i===s);if(!t)return"";if(!t.passes){let{length:i}=t.rejections;return`Your plan, ${t.name}, misses ${i===1?"one demand":`${i} demands`}.`}if(t.rank===1)return`Your plan, ${t.name}, meets every demand, and nothing comes before it.`;let n=`rank ${bo(t,e.choices)} of ${e.passing.length}`;return`Your plan, ${t.name}, meets every demand: ${n} (${t.reasons.join("; ")}).`}var Ji=[{id:"rank",head:"Rank",by:({rank:s})=>s??1/0},{id:"name",head:"Connector",by:({name:s})=>s},{id:"why",head:"Why"},{id:"margin",head:"Margin",by:s=>s.margin_db??s.return_loss_db??-1/0,most:!0},{id:"loss",head:"Loss",by:({loss_db:s})=>s},{id:"size",head:"Size",by:({diameter_m:s})=>s},{id:"coupling",head:"Coupling",by:({torque_nm:s})=>s},{id:"matings",head:"Matings",by:({wear:s})=>s.good_for,most:!0},{id:"weather",head:"Weather",by:Qh,most:!0}],t0={id:"rank",down:!1},s0=s=>Ji.find(e=>e.id===s)??Ji[0],n0=(s,e)=>({id:e,down:s.id===e?!s.down:s0(e).most===!0});function i0(s,{id:e,down:t}){let{by:n}=s0(e);if(!n||e==="rank"&&!t)return s;let i=t?-1:1;return s.toSorted((r,a)=>i*a_(n(r),n(a)))}var a_=(s,e)=>typeof s=="string"?s.localeCompare(e,"en",{numeric:!0}):s===e?0:s-e;var _o=class extends b({choices:m(c),all:m(c),plan:{type:String},heading:{type:String},linkOf:m(c),_order:$(c)}){static styles=[_,J,M(W),g`
      table { width: 100%; border-collapse: collapse; font-size: 0.85rem; }
      th, td { padding: 4px 10px 4px 0; text-align: left; border-bottom: 1px solid var(--line); }
      thead th { color: var(--soft); font-weight: 500; }
      thead button {
        min-width: var(--target); padding: 0; border: 0; background: none; color: inherit; font: inherit;
        text-align: left;
      }
      [aria-sort='ascending'] button::after { content: ' ▲'; }
      [aria-sort='descending'] button::after { content: ' ▼'; }
      .why { max-width: 24em; }
      tbody th a {
        display: inline-grid; align-items: center; min-height: var(--target); min-width: var(--target); font-size: 1rem;
        font-weight: 700;
      }
      .chip {
        display: inline-block; min-width: 4.6em; padding: 4px 6px; border-radius: 6px; text-align: center;
        font-weight: 700; white-space: nowrap;
      }
      .chip[data-step='refused'] { background: var(--refused); color: var(--refused-ink); font-weight: 500; }
      .number { white-space: nowrap; }
      .rank { font-size: 1.05rem; font-weight: 700; }
      small { display: block; color: var(--soft); line-height: 1.3; font-weight: 400; }
      .mark {
        display: inline-block; white-space: nowrap; margin: 0 4px 2px 0; padding: 0 7px; border: 1px solid var(--edge);
        border-radius: 99px; font-size: 0.75rem; font-weight: 500; color: inherit;
      }
      .mark.plan { background: var(--accent-wash); border-color: var(--accent); }
      ul { padding-left: 1.1em; }
      .missed td, .missed th { vertical-align: top; }
      @media (max-width: 760px) {
        .missed thead { position: absolute; clip-path: inset(50%); }
        table, tbody, thead { display: block; }
        .passing thead tr { display: flex; flex-wrap: wrap; align-items: center; gap: 0 12px; }
        .passing thead tr::before { content: 'Order by: '; }
        .passing thead th { padding: 0; border: 0; }
        .passing thead th:not([aria-sort]) { display: none; }
        tbody tr {
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
    `];constructor(){super(),this._order=t0}render(){return this.choices.length>0&&this.choices.every(({passes:e})=>!e)?this._missed():this._passing()}_passing(){return o`<table role="table" class="passing" aria-label=${this.heading}>
      <thead role="rowgroup"><tr role="row">${Ji.map(e=>this._head(e))}</tr></thead>
      <tbody role="rowgroup">
        ${i0(this.choices,this._order).map(e=>o`<tr role="row" data-family=${e.family}>
            <td role="cell" class="rank"><span class="unseen">Rank</span> ${bo(e,this.all)}</td>
            ${this._name(e)}
            <td role="cell" class="why">${Zh(e)}</td>
            ${this._margin(e)}
            <td role="cell" class="number" data-head="Loss">${Kh(e.loss_db)}</td>
            <td role="cell" class="number" data-head="Size">${Vh(e.diameter_m)}</td>
            <td role="cell" data-head="Coupling">${Yh(e)}</td>
            <td role="cell" data-head="Matings">${Xh(e.wear)}</td>
            <td role="cell" data-head="Weather">${Jh(e.weather)}</td>
          </tr>`)}
      </tbody>
    </table>`}_head({id:e,head:t,by:n}){if(!n)return o`<th role="columnheader" scope="col">${t}</th>`;let{id:i,down:r}=this._order;return o`<th role="columnheader" scope="col" aria-sort=${e===i?r?"descending":"ascending":"none"}><button
      @click=${()=>this._order=n0(this._order,e)}>${t}</button></th>`}_missed(){let e=["Connector","Margin","Demands missed"];return o`<table role="table" class="missed" aria-label=${this.heading}>
      <thead role="rowgroup"><tr role="row">${e.map(t=>o`<th role="columnheader" scope="col">${t}</th>`)}</tr></thead>
      <tbody role="rowgroup">
        ${this.choices.map(t=>o`<tr role="row" data-family=${t.family}>
            ${this._name(t)} ${this._margin(t)}
            <td role="cell" ><ul>${t.rejections.map(({name:n,sentence:i})=>o`<li><b>${n}.</b> ${i}</li>`)}</ul></td>
          </tr>`)}
      </tbody>
    </table>`}_name(e){return o`<th role="rowheader" scope="row"><a href="#${this.linkOf(e)}"
      aria-label="${e.name}: open its derivation">${e.name}</a>
      <div>${e.family===this.plan?o`<span class="mark plan">your plan</span>`:h}${se(e.pack)}
        <small>${e.also_called[0]??""}</small></div></th>`}_margin(e){return o`<td role="cell" class="margin" data-head="Margin"><span
      class="chip" data-step=${Uh(e)}>${Fh(e)}</span>
      <small>${Dh(e)}</small><small>${Gh(e)}</small></td>`}};customElements.define("jw-choose-table",_o);var wo=class extends b({result:m(c),answered:m(c),outdated:{type:String}},j){static styles=[_,T,g`
      #verdict { font-size: 1.1rem; font-weight: 600; line-height: 1.35; }
      #plan { font-weight: 600; margin-top: 6px; }
      .place { margin-top: 4px; }
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
    `];render(){let{result:e,answered:t}=this,n=e.choices.find(({family:i})=>i===t.plan)?.rejections??[];return o`<section class="panel">
      <div role="status">
        <p id="verdict">${e.verdict}</p>
        ${t.plan?o`<p id="plan">${e0(t.plan,e)}</p>`:h}
      </div>
      ${n.length>0?o`<ul class="misses">${n.map(({name:i,sentence:r})=>o`<li>${i}: ${r}</li>`)}</ul>`:h}
      <p class="quiet place">${e.place}</p>
      ${e.notes.map(i=>o`<p class="quiet note">${i}</p>`)}
      ${this.outdated?o`<p class="outdated" role="alert">${this.outdated}</p>`:h}
      ${this._doubts()} ${this._ways()}
    </section>`}_doubts(){let{port_doubts:e}=this.result;return e.length===0?h:o`<div class="doubts"><p>What speaks against what it plugs into:</p><ul>${e.map(t=>o`<li>${t}</li>`)}</ul></div>`}_ways(){let{relaxations:e}=this.result;return e.length===0?h:o`<h3>What would let a connector pass</h3>
      <ul class="ways">${e.map(t=>this._way(t))}</ul>`}_way({demand:e,sentence:t,field:n,value:i}){return o`<li data-demand=${e}>
      <span>${t}</span>
      ${n?o`<button ?disabled=${this.outdated!==""}
            @click=${()=>x(this,"jw-choose-change",{changes:{[n]:i},live:!1})}>
            Set ${this._changeWords(n,i)}
          </button>`:h}
    </li>`}_changeWords(e,t){let n=`choose.${e}`;return`${this.vocabulary.labelOf(n).toLowerCase()}: ${this.vocabulary.spoken(n,t)}`}};customElements.define("jw-choose-verdict",wo);var hn=class extends Le{static view="choose";static ownNames=["use","frequencies_hz","margin_asked_db","dc_current_a","dc_voltage_v","installation","port","largest_diameter_m","plan"];static styles=[_,T,Ne,g`
      .onpaper { display: none; }
      @media screen and (max-width: 1179px) {
        .answer { display: contents; }
        jw-choose-verdict, .waiting { order: -1; min-height: 6rem; }
        .bar, .trouble { order: -2; }
      }
      @media print {
        .onpaper { display: block; font-size: 7.5pt; }
        #passing, #missed { break-inside: auto; }
        h2 small { display: none; }
      }
    `];constructor(){super(),this._choose=this._enquiry("choose")}render(){let{error:e,result:t}=this._choose;return o`${this._progress(this._choose)}
      <main @jw-choose-change=${({detail:n})=>this._change(n.changes,n.live)}>
        <div class="bar" role="group" aria-label="Take along">
          <button @click=${()=>this._copyLink()}>Copy link</button>
          <button ?disabled=${!t} @click=${()=>H("jointwise-choose.csv","text/csv",Ph(t))}
            >CSV</button>
          <button @click=${()=>window.print()}>Print</button>
          <button @click=${()=>this._reset()}>Reset</button>
          ${this._undoButtons()}
        </div>
        ${this._trouble()}
        <jw-choose-form class="noprint" .state=${this._state} .refusal=${e}></jw-choose-form>
        ${t?this._answer():o`<p class="waiting quiet">${this._missing||e?.message||"Calculating…"}</p>`}
      </main>`}_answer(){let{answered:e,result:t}=this._choose,n=t.choices.filter(({passes:r})=>!r),i=t.choices.filter(({passes:r})=>r);return o`<div class="answer">
      <jw-choose-verdict .result=${t} .answered=${e} .outdated=${this._outdated}></jw-choose-verdict>
      <p class="onpaper">${this._demands(e)}</p>
      ${i.length>0?this._panel("passing","Connectors that meet every demand",i):h}
      ${n.length>0?this._panel("missed","Connectors that miss a demand",n):h}
      <jw-cautions .cautions=${t.cautions}></jw-cautions>
    </div>`}_panel(e,t,n){let{answered:i,result:r}=this._choose,{first:a}=this.vocabulary,{bands:l,band:d,frequency_hz:u}=this.station.settings,p=sn({...this.station,settings:Ze({band:d,frequency_hz:u})},["band","frequency_hz"]),f=y=>[Lh(y,i,r,a.matrix,l),p].filter(Boolean).join("&");return o`<section class="panel" id=${e}>
      <h2>${t} (${n.length}) <small>a tap on a name opens its derivation in the matrix</small></h2>
      <jw-choose-table .choices=${n} .all=${r.choices} .plan=${i.plan??""} .heading=${t}
        .linkOf=${f}></jw-choose-table>
      ${e==="passing"?o`<p class="quiet legend">${r.rule} A tap on a column’s head orders by it, a tap on Rank goes back.
          Loss is that of the mated pair at the highest frequency${i.port?", with the joint it plugs into":""}.</p>`:h}
    </section>`}get _outdated(){let e=this._missing||this._choose.error?.message;return e?`Out of date, this is the answer from before the last change. ${e}`:""}get _missing(){return Di(this._state,this.vocabulary)}_trouble(){let{error:e}=this._choose;return!e||de(e)in this.vocabulary.fields.choose?h:o`<p class="trouble" role="alert">${e.message} <button
      @click=${()=>this._ask(!0)}>Try again</button></p>`}_demands(e){return Object.entries(e).filter(([,t])=>!Array.isArray(t)||t.length>0).map(([t,n])=>`${this.vocabulary.labelOf(`choose.${t}`)}: ${this.vocabulary.spoken(`choose.${t}`,n)}`).join(" · ")}_ask(e=!1){if(this._missing)return;let t=zh(this._state,this.vocabulary),n=JSON.stringify(t);(e||n!==this._asked)&&this._choose.askNext(t),this._asked=n}};customElements.define("jw-choose-view",hn);var r0=({bands:s,families:e,installations:t})=>({"choose.use":{label:"The joint is for",options:{transmit:"transmitting",receive:"receiving only"}},"choose.power_w":{label:"Power, peak envelope"},"choose.bands":{label:"Bands it must carry",named:s},"choose.margin_asked_db":{label:"Margin asked for"},"choose.dc_current_a":{label:"Direct current up the coax"},"choose.dc_voltage_v":{label:"Its voltage"},"choose.installation":{label:"Where it sits",entries:t},"choose.port":{label:"What it plugs into",options:oe("nothing yet",e)},"choose.largest_diameter_m":{label:"Largest diameter that fits",factor:.001,unit:"mm"},"choose.plan":{label:"Check my plan",options:oe("no plan yet",e)}});var a0={id:hn.view,label:"Choose",fields:Rh,words:r0,element:({transport:s,stage:e})=>o`<jw-choose-view class="view" .transport=${s} .stage=${e}></jw-choose-view>`};var o_={...Xs,...Object.fromEntries(Js.map(s=>[s,Xs.part])),...Object.fromEntries(Object.entries(ri).map(([s,e])=>[`load_${s}`,e])),point:"ImpedancePoint",transmitter:"Transmitter",receiver:"Receiver",preamplifier:"Preamplifier"},l_=["elements","load","transmitter","receiver","explain"],mn=s=>Object.fromEntries(Object.entries(s).filter(([e])=>!l_.includes(e)));function Zi({requests:s,parts:e},t){let{bands:n,cables:i,conditions:r,families:a,modes:l,transmitters:d,wire_lines:u}=t,{noise_environments:p,antenna_views:f}=t,y={cable:{cable:i},wires:{line:u},joint:{family:a,adapter_to:a,condition:r},transmitter:{behaviour:d},receiver:{environment:p,antenna_view:f},station:{mode:l,band:n}},w={station:mn(s.line)};for(let[v,S]of Object.entries(o_))w[v]=e[S];return Object.fromEntries(Object.entries(w).map(([v,S])=>[v,ft(S,y[v])]))}var d_={family:"n",cable:"rg_213",length_m:10,band:"20m",exposure:"exposed"};function o0(s,e){let{joint:t,cable:n}=Zi(s,e),i={...mn(s.requests.fitout),of:{type:"choice",choices:["line","joint"],default:"line",nullable:!1},shown:{type:"number",min:1,max:120,default:1,nullable:!1},family:t.family,adapter_to:t.adapter_to,name:t.name,cable:{...n.cable,nullable:!0},length_m:n.length_m};for(let[r,a]of Object.entries(d_))i[r]={...i[r],default:a};return{fitout:i}}var c_={key:"jointwise-lines",blocked:"This browser keeps nothing for the page: your lines end when it is closed. Export them to keep them.",full:"This browser has no room for all of your lines: the latest changes are not kept. Export them to keep them.",spoilt:"The lines kept in this browser could not be read and were set aside. Save them as a file to look for what is left."};function u_({base:s,mine:e,theirs:t}){let n=e.lines[e.current],i=new Set(e.lines.map(({request:l})=>JSON.stringify(l))),r=Ee({base:s.lines,mine:e.lines,theirs:t.lines},({name:l})=>l,(l,d)=>i.has(JSON.stringify(l.request))?void 0:{...l,name:Yu(l.name,d,en)}),a=r.findIndex(({name:l})=>l===n.name);return{lines:r,current:a===-1?Math.min(e.current,r.length-1):a}}var Pe=new fe(c_,({lines:s,current:e},t)=>{let n=gi(s,t);return{lines:n,current:Number.isInteger(e)&&n[e]?e:0}},u_);var h_=["transmitter","load"],l0=["band","frequency_hz"];function tt(s,e,{fields:t,first:n}){let{settings:i}=e,r=l0.some(p=>p in s),a=Object.keys(t.station).filter(p=>!(r&&l0.includes(p))),l=Object.fromEntries(a.filter(p=>p in i).map(p=>[p,i[p]])),d=r?null:tn(i,"band",n.settings.band),u=yi(e);return{...l,...d&&{band:d},...u&&{transmitter:u},load:vu(e,n.settings.vswr),...s}}function d0(s,e,t){let{fields:n}=t,i=d=>h_.includes(d)||Object.hasOwn(n.station,d),r=Object.keys(s).filter(i),a=tt(m_(s,r),e,t),l=d=>a[d]??n.station[d]?.default;return r.filter(d=>JSON.stringify(s[d])!==JSON.stringify(l(d)))}var m_=(s,e)=>Object.fromEntries(Object.entries(s).filter(([t])=>!e.includes(t)));function we(s){if(!s)return"";let e=[s.body,s.year,s.place].filter(Boolean).join(", ");return e?`${s.title} (${e})`:s.title}var f_=new Set(["common_practice","memory",""]),g_=s=>s==="source"||s==="sources"||s.endsWith("_source");function*c0(s){for(let[e,t]of Object.entries(s??{}))g_(e)?yield*[t].flat():typeof t=="object"&&(yield*c0(t))}function Qi(...s){let e=new Set(s.flatMap(t=>[...c0(t)]).filter(t=>!f_.has(t)));return new Map([...e].map((t,n)=>[t,n+1]))}function u0(s,e,t){let n=[...new Set(e)].map(i=>t.get(i)).filter(Boolean);return[[...new Set(s)].join(", "),n.length>0?`[${n.join(", ")}]`:""].filter(Boolean).join(" ")}var h0=s=>new Map(s?.sources.map(e=>[e.id,we(e)]));var b_=()=>{let s=new Date;return[s.getFullYear(),s.getMonth()+1,s.getDate()].map(e=>String(e).padStart(2,"0")).join("-")},yo=class extends V{static styles=[...V.styles,g`div { display: flex; gap: 6px; } button { flex: none; }`];render(){return o`<label for=${this.name}>${this.label}</label>
      <div>
        <input id=${this.name} type="date" .value=${this.value} aria-invalid=${this.invalid} aria-describedby="under"
          @change=${e=>this.change(e.target.value)}>
        <button @click=${()=>this.change(b_())}>Today</button>
      </div>
      ${this.under("left out, none is printed")}`}};customElements.define("jw-fitout-date",yo);var __=["load","receiver","explain"];function w_({family:s,adapter_to:e,name:t,cable:n,length_m:i}){let r=Qe({kind:"joint",family:s,adapter_to:e,name:t});return n===null?[r]:[{kind:"cable",cable:n,length_m:i},r]}function er(s,e){return{...Object.fromEntries(Object.entries(e).filter(([n])=>!__.includes(n))),...Qe({station:s.station,date:s.date})}}function m0(s,e){return{elements:w_(s),...Qe(Object.fromEntries(e.map(t=>[t,s[t]])))}}var pn=s=>s?.field?.replace(/^elements\[\d+\]\./,"").split(/[[.]/)[0]??"";var y_=["family","adapter_to","cable","length_m","name","exposure","added_sealing"],x_=["power_w","mode","band","frequency_hz","vibration","matings_per_year","service_life_years","ambient_temperature_c"],$_=142e5,xo=class extends b({state:m(c),line:m(c),linked:{type:Boolean},refusal:m(c)},j){static styles=[_,ue,g`:host { padding: 12px; background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
    .double { grid-column: span 2; }
    p { margin: 4px 0 8px; font-size: 0.9rem; }
    p a { display: inline-grid; min-height: var(--target); align-items: center; }`];render(){return o`<div @jw-change=${this._changed}>
      <h2 class="unseen">What is fitted</h2>
      <div class="fields">${["of","station","date"].map(e=>this._field(e))}</div>
      ${this.state.of==="line"?this._line():this._joint()}
    </div>`}_line(){let{name:e,request:t}=this.line,{length:n}=t.elements,i=n===1?"one element":`${n} elements`;return o`<p><b>${e}</b>, ${i}${this.linked?", as it came with the link":""}.
      <a href="#view=line">Change it in the Line view</a>
      ${this.linked?o`<button @click=${()=>x(this,"jw-fitout-own")}>Use my own line</button>`:h}</p>`}_joint(){return o`<div class="fields">${[...y_,...x_].map(e=>this._field(e))}</div>`}_field(e){if(e==="length_m"&&this.state.cable===null)return h;if(e==="frequency_hz"&&this.state.band!==null)return h;let t=`fitout.${e}`,{refusal:n,state:i}=this,a=n&&pn(n)===e?n.message:"";return e==="date"?o`<jw-fitout-date class="double" name=${t} .value=${i.date} .error=${a}></jw-fitout-date>`:C(this.vocabulary,t,i[e],a)}_changed(e){if(e.stopPropagation(),e.detail.live)return;let t=I(e);"band"in t&&(t.frequency_hz=t.band===null?this.state.frequency_hz??$_:null),x(this,"jw-fitout-change",{changes:t})}};customElements.define("jw-fitout-form",xo);var v_=.01;function R(s){return s===null?"–":`${Math.abs(s)<v_?k(s,1):s.toFixed(2)} dB`}var Gt=(s=>(s[s.Border=-1]="Border",s[s.Data=0]="Data",s[s.Function=1]="Function",s[s.Position=2]="Position",s[s.Timing=3]="Timing",s[s.Alignment=4]="Alignment",s))(Gt||{}),k_=[0,1],f0=[1,0],g0=[2,3],b0=[3,2],S_={L:k_,M:f0,Q:g0,H:b0},j_=/^\d*$/,E_=/^[A-Z0-9 $%*+./:-]*$/,$o="0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:",jo=1,Eo=40,p0=3,O_=3,tr=40,T_=10,_0=[[-1,7,10,15,20,26,18,20,24,30,18,20,24,26,30,22,24,28,30,28,28,28,28,30,30,26,28,30,30,30,30,30,30,30,30,30,30,30,30,30,30],[-1,10,16,26,18,24,16,18,22,22,26,30,22,22,24,24,28,28,26,26,26,26,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28],[-1,13,22,18,26,18,24,18,22,20,24,28,26,24,20,30,24,28,28,26,30,28,30,30,30,30,28,30,30,30,30,30,30,30,30,30,30,30,30,30,30],[-1,17,28,22,16,22,28,26,26,24,28,24,28,22,24,24,30,28,28,26,28,30,24,30,30,30,30,30,30,30,30,30,30,30,30,30,30,30,30,30,30]],w0=[[-1,1,1,1,1,1,2,2,2,2,4,4,4,4,4,6,6,6,6,7,8,8,9,9,10,12,12,12,13,14,15,16,17,18,19,19,20,21,22,24,25],[-1,1,1,1,2,2,4,4,4,5,5,5,8,9,9,10,10,11,13,14,16,17,17,18,20,21,23,25,26,28,29,31,33,35,37,38,40,43,45,47,49],[-1,1,1,2,2,4,4,6,6,8,8,8,10,12,16,12,17,16,18,21,20,23,23,25,27,29,34,34,35,38,40,43,45,48,51,53,56,59,62,65,68],[-1,1,1,2,4,4,4,5,6,8,8,11,11,16,16,18,16,19,21,25,25,25,34,30,32,35,37,40,42,45,48,51,54,57,60,63,66,70,74,77,81]],vo=class{constructor(e,t,n,i){if(this.version=e,this.ecc=t,e<jo||e>Eo)throw new RangeError("Version value out of range");if(i<-1||i>7)throw new RangeError("Mask value out of range");this.size=e*4+17;let r=Array.from({length:this.size}).fill(!1);for(let l=0;l<this.size;l++)this.modules.push(r.slice()),this.types.push(r.map(()=>0));this.drawFunctionPatterns();let a=this.addEccAndInterleave(n);if(this.drawCodewords(a),i===-1){let l=1e9;for(let d=0;d<8;d++){this.applyMask(d),this.drawFormatBits(d);let u=this.getPenaltyScore();u<l&&(i=d,l=u),this.applyMask(d)}}this.mask=i,this.applyMask(i),this.drawFormatBits(i)}size;mask;modules=[];types=[];getModule(e,t){return e>=0&&e<this.size&&t>=0&&t<this.size&&this.modules[t][e]}drawFunctionPatterns(){for(let n=0;n<this.size;n++)this.setFunctionModule(6,n,n%2===0,Gt.Timing),this.setFunctionModule(n,6,n%2===0,Gt.Timing);this.drawFinderPattern(3,3),this.drawFinderPattern(this.size-4,3),this.drawFinderPattern(3,this.size-4);let e=this.getAlignmentPatternPositions(),t=e.length;for(let n=0;n<t;n++)for(let i=0;i<t;i++)n===0&&i===0||n===0&&i===t-1||n===t-1&&i===0||this.drawAlignmentPattern(e[n],e[i]);this.drawFormatBits(0),this.drawVersion()}drawFormatBits(e){let t=this.ecc[1]<<3|e,n=t;for(let r=0;r<10;r++)n=n<<1^(n>>>9)*1335;let i=(t<<10|n)^21522;for(let r=0;r<=5;r++)this.setFunctionModule(8,r,st(i,r));this.setFunctionModule(8,7,st(i,6)),this.setFunctionModule(8,8,st(i,7)),this.setFunctionModule(7,8,st(i,8));for(let r=9;r<15;r++)this.setFunctionModule(14-r,8,st(i,r));for(let r=0;r<8;r++)this.setFunctionModule(this.size-1-r,8,st(i,r));for(let r=8;r<15;r++)this.setFunctionModule(8,this.size-15+r,st(i,r));this.setFunctionModule(8,this.size-8,!0)}drawVersion(){if(this.version<7)return;let e=this.version;for(let n=0;n<12;n++)e=e<<1^(e>>>11)*7973;let t=this.version<<12|e;for(let n=0;n<18;n++){let i=st(t,n),r=this.size-11+n%3,a=Math.floor(n/3);this.setFunctionModule(r,a,i),this.setFunctionModule(a,r,i)}}drawFinderPattern(e,t){for(let n=-4;n<=4;n++)for(let i=-4;i<=4;i++){let r=Math.max(Math.abs(i),Math.abs(n)),a=e+i,l=t+n;a>=0&&a<this.size&&l>=0&&l<this.size&&this.setFunctionModule(a,l,r!==2&&r!==4,Gt.Position)}}drawAlignmentPattern(e,t){for(let n=-2;n<=2;n++)for(let i=-2;i<=2;i++)this.setFunctionModule(e+i,t+n,Math.max(Math.abs(i),Math.abs(n))!==1,Gt.Alignment)}setFunctionModule(e,t,n,i=Gt.Function){this.modules[t][e]=n,this.types[t][e]=i}addEccAndInterleave(e){let t=this.version,n=this.ecc;if(e.length!==sr(t,n))throw new RangeError("Invalid argument");let i=w0[n[0]][t],r=_0[n[0]][t],a=Math.floor(ko(t)/8),l=i-a%i,d=Math.floor(a/i),u=[],p=P_(r);for(let y=0,w=0;y<i;y++){let v=e.slice(w,w+d-r+(y<l?0:1));w+=v.length;let S=W_(v,p);y<l&&v.push(0),u.push(v.concat(S))}let f=[];for(let y=0;y<u[0].length;y++)u.forEach((w,v)=>{(y!==d-r||v>=l)&&f.push(w[y])});return f}drawCodewords(e){if(e.length!==Math.floor(ko(this.version)/8))throw new RangeError("Invalid argument");let t=0;for(let n=this.size-1;n>=1;n-=2){n===6&&(n=5);for(let i=0;i<this.size;i++)for(let r=0;r<2;r++){let a=n-r,d=(n+1&2)===0?this.size-1-i:i;!this.types[d][a]&&t<e.length*8&&(this.modules[d][a]=st(e[t>>>3],7-(t&7)),t++)}}}applyMask(e){if(e<0||e>7)throw new RangeError("Mask value out of range");for(let t=0;t<this.size;t++)for(let n=0;n<this.size;n++){let i;switch(e){case 0:i=(n+t)%2===0;break;case 1:i=t%2===0;break;case 2:i=n%3===0;break;case 3:i=(n+t)%3===0;break;case 4:i=(Math.floor(n/3)+Math.floor(t/2))%2===0;break;case 5:i=n*t%2+n*t%3===0;break;case 6:i=(n*t%2+n*t%3)%2===0;break;case 7:i=((n+t)%2+n*t%3)%2===0;break;default:throw new Error("Unreachable")}!this.types[t][n]&&i&&(this.modules[t][n]=!this.modules[t][n])}}getPenaltyScore(){let e=0;for(let r=0;r<this.size;r++){let a=!1,l=0,d=[0,0,0,0,0,0,0];for(let u=0;u<this.size;u++)this.modules[r][u]===a?(l++,l===5?e+=p0:l>5&&e++):(this.finderPenaltyAddHistory(l,d),a||(e+=this.finderPenaltyCountPatterns(d)*tr),a=this.modules[r][u],l=1);e+=this.finderPenaltyTerminateAndCount(a,l,d)*tr}for(let r=0;r<this.size;r++){let a=!1,l=0,d=[0,0,0,0,0,0,0];for(let u=0;u<this.size;u++)this.modules[u][r]===a?(l++,l===5?e+=p0:l>5&&e++):(this.finderPenaltyAddHistory(l,d),a||(e+=this.finderPenaltyCountPatterns(d)*tr),a=this.modules[u][r],l=1);e+=this.finderPenaltyTerminateAndCount(a,l,d)*tr}for(let r=0;r<this.size-1;r++)for(let a=0;a<this.size-1;a++){let l=this.modules[r][a];l===this.modules[r][a+1]&&l===this.modules[r+1][a]&&l===this.modules[r+1][a+1]&&(e+=O_)}let t=0;for(let r of this.modules)t=r.reduce((a,l)=>a+(l?1:0),t);let n=this.size*this.size,i=Math.ceil(Math.abs(t*20-n*10)/n)-1;return e+=i*T_,e}getAlignmentPatternPositions(){if(this.version===1)return[];{let e=Math.floor(this.version/7)+2,t=this.version===32?26:Math.ceil((this.version*4+4)/(e*2-2))*2,n=[6];for(let i=this.size-7;n.length<e;i-=t)n.splice(1,0,i);return n}}finderPenaltyCountPatterns(e){let t=e[1],n=t>0&&e[2]===t&&e[3]===t*3&&e[4]===t&&e[5]===t;return(n&&e[0]>=t*4&&e[6]>=t?1:0)+(n&&e[6]>=t*4&&e[0]>=t?1:0)}finderPenaltyTerminateAndCount(e,t,n){return e&&(this.finderPenaltyAddHistory(t,n),t=0),t+=this.size,this.finderPenaltyAddHistory(t,n),this.finderPenaltyCountPatterns(n)}finderPenaltyAddHistory(e,t){t[0]===0&&(e+=this.size),t.pop(),t.unshift(e)}};function nt(s,e,t){if(e<0||e>31||s>>>e)throw new RangeError("Value out of range");for(let n=e-1;n>=0;n--)t.push(s>>>n&1)}function st(s,e){return(s>>>e&1)!==0}var fn=class{constructor(e,t,n){if(this.mode=e,this.numChars=t,this.bitData=n,t<0)throw new RangeError("Invalid argument");this.bitData=n.slice()}getData(){return this.bitData.slice()}},A_=[1,10,12,14],q_=[2,9,11,13],M_=[4,8,16,16];function y0(s,e){return s[Math.floor((e+7)/17)+1]}function x0(s){let e=[];for(let t of s)nt(t,8,e);return new fn(M_,s.length,e)}function C_(s){if(!$0(s))throw new RangeError("String contains non-numeric characters");let e=[];for(let t=0;t<s.length;){let n=Math.min(s.length-t,3);nt(Number.parseInt(s.substring(t,t+n),10),n*3+1,e),t+=n}return new fn(A_,s.length,e)}function R_(s){if(!v0(s))throw new RangeError("String contains unencodable characters in alphanumeric mode");let e=[],t;for(t=0;t+2<=s.length;t+=2){let n=$o.indexOf(s.charAt(t))*45;n+=$o.indexOf(s.charAt(t+1)),nt(n,11,e)}return t<s.length&&nt($o.indexOf(s.charAt(t)),6,e),new fn(q_,s.length,e)}function z_(s){return s===""?[]:$0(s)?[C_(s)]:v0(s)?[R_(s)]:[x0(L_(s))]}function $0(s){return j_.test(s)}function v0(s){return E_.test(s)}function N_(s,e){let t=0;for(let n of s){let i=y0(n.mode,e);if(n.numChars>=1<<i)return Number.POSITIVE_INFINITY;t+=4+i+n.bitData.length}return t}function L_(s){s=encodeURI(s);let e=[];for(let t=0;t<s.length;t++)s.charAt(t)!=="%"?e.push(s.charCodeAt(t)):(e.push(Number.parseInt(s.substring(t+1,t+3),16)),t+=2);return e}function ko(s){if(s<jo||s>Eo)throw new RangeError("Version number out of range");let e=(16*s+128)*s+64;if(s>=2){let t=Math.floor(s/7)+2;e-=(25*t-10)*t-55,s>=7&&(e-=36)}return e}function sr(s,e){return Math.floor(ko(s)/8)-_0[e[0]][s]*w0[e[0]][s]}function P_(s){if(s<1||s>255)throw new RangeError("Degree out of range");let e=[];for(let n=0;n<s-1;n++)e.push(0);e.push(1);let t=1;for(let n=0;n<s;n++){for(let i=0;i<e.length;i++)e[i]=So(e[i],t),i+1<e.length&&(e[i]^=e[i+1]);t=So(t,2)}return e}function W_(s,e){let t=e.map(n=>0);for(let n of s){let i=n^t.shift();t.push(0),e.forEach((r,a)=>t[a]^=So(r,i))}return t}function So(s,e){if(s>>>8||e>>>8)throw new RangeError("Byte out of range");let t=0;for(let n=7;n>=0;n--)t=t<<1^(t>>>7)*285,t^=(e>>>n&1)*s;return t}function I_(s,e,t=1,n=40,i=-1,r=!0){if(!(jo<=t&&t<=n&&n<=Eo)||i<-1||i>7)throw new RangeError("Invalid value");let a,l;for(a=t;;a++){let f=sr(a,e)*8,y=N_(s,a);if(y<=f){l=y;break}if(a>=n)throw new RangeError("Data too long")}for(let f of[f0,g0,b0])r&&l<=sr(a,f)*8&&(e=f);let d=[];for(let f of s){nt(f.mode[0],4,d),nt(f.numChars,y0(f.mode,a),d);for(let y of f.getData())d.push(y)}let u=sr(a,e)*8;nt(0,Math.min(4,u-d.length),d),nt(0,(8-d.length%8)%8,d);for(let f=236;d.length<u;f^=253)nt(f,8,d);let p=Array.from({length:Math.ceil(d.length/8)},()=>0);return d.forEach((f,y)=>p[y>>>3]|=f<<7-(y&7)),new vo(a,e,p,i)}function k0(s,e){let{ecc:t="L",boostEcc:n=!1,minVersion:i=1,maxVersion:r=40,maskPattern:a=-1,border:l=1}=e||{},d=typeof s=="string"?z_(s):Array.isArray(s)?[x0(s)]:void 0;if(!d)throw new Error(`uqr only supports encoding string and binary data, but got: ${typeof s}`);let u=I_(d,S_[t],i,r,a,n),p=B_({version:u.version,maskPattern:u.mask,size:u.size,data:u.modules,types:u.types},l);return e?.invert&&(p.data=p.data.map(f=>f.map(y=>!y))),e?.onEncoded?.(p),p}function B_(s,e=1){if(!e)return s;let{size:t}=s,n=t+e*2;s.size=n,s.data.forEach(r=>{for(let a=0;a<e;a++)r.unshift(!1),r.push(!1)});for(let r=0;r<e;r++)s.data.unshift(Array.from({length:n},a=>!1)),s.data.push(Array.from({length:n},a=>!1));let i=Gt.Border;s.types.forEach(r=>{for(let a=0;a<e;a++)r.unshift(i),r.push(i)});for(let r=0;r<e;r++)s.types.unshift(Array.from({length:n},a=>i)),s.types.push(Array.from({length:n},a=>i));return s}var H_="M",F_=4;function S0(s,{fragment:e},t){let n=Number(new URLSearchParams(e).get("power_w")),i=_e(t,n);return`${s}#${e}${i===t?"":`&powers_w=${i.join(",")}`}`}function j0(s){let{data:e,size:t}=k0(s,{ecc:H_,border:F_}),n="";return e.forEach((i,r)=>{for(let a=0;a<t;a++){if(!i[a])continue;let l=a;for(;i[a+1];)a++;n+=`M${l} ${r}h${a-l+1}v1H${l}z`}}),{size:t,path:n}}var Oo=class extends b({result:m(c),_refused:$(c)},$e){static styles=[_,T,g`
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
    `];constructor(){super(),this._refused=""}render(){let e=zt(this._refused);return o`<section class="panel">
      <h2>Labels</h2>
      <div class="address noprint">
        <label for="address">Address of the page in the codes</label>
        <input id="address" type="url" autocomplete="off" placeholder=${va(location)} 
          .value=${this._refused||this.station.address}
          aria-invalid=${e?"true":"false"} aria-describedby="about" @change=${this._changed}>
        <p id="about" class=${e?"error":"quiet"}
          role=${e?"alert":"note"}>${e||this._about()}</p>
      </div>
      <div class="labels">${this.result.joints.map(t=>this._label(t))}</div>
    </section>`}get _address(){return Si(this.station,location)}_about(){return ms(this._address)?`Each code opens the derivation of its joint at ${this._address}.`:"This page is a file, so its codes open on this device alone; give the address of a served page, and they open there."}_changed(e){let t=e.target.value.trim();this._refused=zt(t)?t:"",this._refused||this.stationStore.change("fitout",{address:t})}_label({heading:e,label:t}){let n=S0(this._address,t,this.vocabulary.first.matrix.powers_w),{size:i,path:r}=j0(n),{station:a}=this.result;return o`<div class="label">
      <div>
        <p class="name">${t.name}</p>
        <p><b>${t.family}</b>${a?`, ${a}`:""}</p>
        ${t.date?o`<p>Fitted ${t.date}</p>`:h}
        <p>At ${O(t.frequency_hz)}:</p>
        <p>loss ${R(t.expected_loss_db)}</p>
        <p>return loss ${t.expected_return_loss_db.toFixed(0)} dB, least ${t.least_return_loss_db.toFixed(0)}
        dB</p>
      </div>
      <svg viewBox="0 0 ${i} ${i}" role="img" aria-label="Code that opens the derivation of ${e}"
        shape-rendering="crispEdges">
        ${G`<rect width=${i} height=${i} fill="#fff"></rect><path d=${r} fill="#000"></path>`}
      </svg>
    </div>`}};customElements.define("jw-fitout-labels",Oo);var We=(s,e,t)=>o`<small class="from">${u0(s,e,t)}</small>`,Kt=({text:s,kind:e,source:t},n)=>o`${s} ${We([e],[t],n)}`,it=(s,e)=>o`<ul>${s.map(t=>o`<li>${Kt(t,e)}</li>`)}</ul>`;function E0(s,e){let t=[];return s.forEach((n,i)=>{t.at(-1)?.at!==n.at&&t.push({at:n.at,first:i+1,steps:[]}),t.at(-1).steps.push(n)}),t.map(({at:n,first:i,steps:r})=>o`<h4>${n?`On ${n}`:"The pair"}</h4>
      <ol start=${i}>${r.map(a=>o`<li>${Kt(a,e)}</li>`)}</ol>`)}function nr(s,e){return s.size===0?h:o`<p class="sources">${[...s].map(([t,n])=>o`<span>[${n}] ${e.get(t)??t}. </span>`)}</p>`}var O0=10,T0=1e-9;function To({quantity:s,unit:e}){return e!=="m"?Math.ceil(s-T0):Math.ceil(le(e).shown(s)*O0-T0)/O0}var A0=({unit:s})=>s==="m"?` ${le(s).unit}`:"",U_=[["what",s=>s.what],["detail",s=>s.detail],["quantity",To],["unit",({unit:s})=>le(s).unit],["family",s=>s.family],["cable",s=>s.cable]],q0=s=>wt(U_,s);var ys=g`
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
`,M0=g`
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
`;var Ao=s=>`${s.toFixed(1)} dB`,D_=[["expected_loss_db","Loss of the line",R],["expected_return_loss_db","Return loss, expected",Ao],["least_return_loss_db","Return loss, least: below it something is wrong",Ao],["shorted_return_loss_db","Return loss with the far end shorted",Ao]],qo=class extends b({result:m(c),titles:m(c)}){static styles=[_,T,ys,g`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; }
      .head { display: flex; flex-wrap: wrap; gap: 8px; justify-content: space-between; align-items: center; }
      .head button { font-size: 0.85rem; }
      p { font-size: 0.9rem; }
      .plain { margin: 4px 0 8px; }
      @media print { button { display: none; } .panel { border: 0; padding: 0; break-inside: auto; } }
    `];render(){let{bonding:e,marks:t,measurement:n,quantities:i}=this.result,r=Qi(n,{bonding:e});return o`<section class="panel" id="quantities">
        <div class="head"><h2>What to have ready</h2>
          <button ?disabled=${i.length===0}
            @click=${()=>H("jointwise-quantities.csv","text/csv",q0(i))}>List as
            CSV</button></div>
        <table class="plain">
          <thead><tr><th scope="col">What</th><th scope="col">Detail</th><th scope="col"
            class="number">Quantity</th></tr></thead>
          <tbody>${i.map(a=>o`<tr><th scope="row">${a.what}</th><td>${a.detail}</td><td
                class="number">${To(a)}${A0(a)}</td></tr>`)}</tbody>
        </table>
        ${t.map(a=>o`<p class="warning">${a}</p>`)}
      </section>
      <section class="panel" id="measurement">
        <h2>First measurement</h2>
        <p>At ${O(n.frequency_hz)}, with a good load of ${k(n.load_ohm)} Ω in place of
        the antenna:</p>
        <table class="plain"><tbody>${D_.filter(([a])=>n[a]!==null).map(([a,l,d])=>o`<tr data-field=${a}><th scope="row">${l}</th><td
              class="number">${d(n[a])}</td></tr>`)}</tbody></table>
        ${it(n.advice,r)}
      </section>
      ${e.length>0?o`<section class="panel" id="bonding"><h2>Bonding and
          lightning</h2>${it(e,r)}</section>`:h}
      ${nr(r,this.titles)}`}};customElements.define("jw-fitout-list",qo);var Mo=class extends b({sheet:m(c),numbers:m(c)}){static styles=[_,ys,g`
      :host { display: contents; }
      section { padding-bottom: 12px; break-inside: avoid-column; }
      @media print { section { padding-bottom: 2mm; break-inside: auto; } }
      .not { color: var(--alarm); font-weight: 700; }
    `];render(){let{galvanic:e,inspection:t,near_relatives:n,wear:i}=this.sheet,{numbers:r}=this;return o`<section id="galvanic"><h3>Metals that meet</h3>
        <ul>${e.map(a=>o`<li><span class=${a.passed?"":"not"}>${a.contact}: ${a.sentence}</span>
            ${We(a.kinds,a.sources,r)}</li>`)}</ul></section>
      <section id="inspection"><h3>Inspect</h3>
        <p>Every ${t.interval_months} months${t.due?o`, next by <b>${t.due}</b>`:""}${t.note?`; ${t.note}`:""}.
        ${We([t.kind],[t.source],r)}</p>
        ${it(t.checks,r)}</section>
      <section id="wear"><h3>Wear</h3><p>${i.sentence} ${We([i.kind],[i.source],r)}</p></section>
      ${n.length>0?o`<section id="relatives"><h3>Near relatives: what not to mate</h3>
            <ul>${n.map(a=>o`<li><b>${a.name}, ${a.verdict}.</b> ${Kt(a,r)}</li>`)}</ul></section>`:h}`}};customElements.define("jw-fitout-care",Mo);var Co=class extends b({sheet:m(c),titles:m(c),of:{type:String}}){static styles=[_,J,ys,g`
      article {
        padding: 14px 16px; background: var(--card); border: 1px solid var(--line); border-radius: var(--round);
      }
      @media print { article { padding: 0; border: 0; } }
    `];render(){let{sheet:e}=this,t=this._numbers;return o`<article aria-labelledby="heading">
      <h2 id="heading">${e.heading}${se(e.pack)}</h2>
      ${this.of?o`<p class="quiet">${this.of}</p>`:h}
      ${e.warnings.map(n=>o`<p class="warning"><b>${n.name}.</b> ${n.sentence} ${We([n.kind],[n.source],t)}</p>`)}
      <div class="columns">
        <section id="parts"><h3>Parts</h3>${this._parts()}</section>
        <section id="tools"><h3>Tools</h3>${it(e.tools,t)}</section>
        <section id="steps"><h3>Steps</h3>${E0(e.steps,t)}</section>
        <section id="torque"><h3>Torque</h3>${this._torque()}</section>
        <section id="sealing"><h3>Sealing</h3>${this._sealing()}</section>
        ${this._cable()}
        <jw-fitout-care .sheet=${e} .numbers=${t}></jw-fitout-care>
      </div>
      ${nr(t,this.titles)}
    </article>`}get _numbers(){return Qi(this.sheet)}_parts(){let{adapter:e,gender:t,halves:n}=this.sheet;return o`<table class="plain"><thead><tr><th scope="col">Half</th><th scope="col">On</th><th
      scope="col">Put on by</th></tr></thead>
      <tbody>${n.map(i=>o`<tr><th scope="row">${i.half}, ${this.sheet.family_name}</th>
          <td>${i.on}${i.cable_diameter_m===null?"":`, ${Wt(i.cable_diameter_m)}`}</td><td
            >${i.attachment||"–"}</td></tr>`)}</tbody></table>
      <ul>${e?o`<li>Adapter: ${e}</li>`:h}<li>${Kt(t,this._numbers)}</li></ul>`}_torque(){let{torque:e}=this.sheet;return o`<p class="figure">${e.sentence}</p>
      <p class="quiet">${e.notes.join("; ")}</p>${We(e.kinds,e.sources,this._numbers)}`}_sealing(){let{sealing:e}=this.sheet,t=this._numbers,n=e.mated_meaning.map(({text:i})=>i).join("; ");return o`<p class=${e.refused?"warning":""}>${e.sentence}
    ${We([e.kind],[e.source],t)}</p>
      <p class="quiet">Mated: ${e.mated}${n&&`, ${n}`}.</p>
      ${this._part("Prepare",e.preparation)}
      ${e.layers.length>0?o`<h4>Layers, from the inside out</h4>
            <ol class="layers">${e.layers.map(i=>o`<li><b>${i.name}</b>, ${be(i.length_m,2)}. ${Kt(i,t)}</li>`)}</ol>`:h}
      ${this._part("Lead the water away",e.water)}`}_part(e,t){return t.length>0?o`<h4>${e}</h4>${it(t,this._numbers)}`:h}_cable(){let{bends:e,relief:t}=this.sheet;return e.length+t.length===0?h:o`<section id="bends"><h3>Bends and strain relief</h3>
      <ul>${e.map(n=>o`<li>${this._bend(n)}</li>`)}</ul>${it(t,this._numbers)}</section>`}_bend(e){let t=e.repeated_radius_m===null?"not to be bent again":`bent again and again: ${Wt(e.repeated_radius_m)}`,n=[e.fixed_kind,e.repeated_kind].filter(Boolean),i=[e.fixed_source,e.repeated_source].filter(Boolean);return o`${e.name}, smallest radius laid once: ${Wt(e.fixed_radius_m)}; ${t}.
      ${We(n,i,this._numbers)}`}};customElements.define("jw-fitout-sheet",Co);function gn({name:s,request:e},t){let n=(l,d)=>d===null?[]:[`${l}=${encodeURIComponent(d)}`],[i,r,a]=[n("view","line"),n("name",s),n("open",t)];return hi([...i,...r,...a].join("&"),"line",e,[...i,...a].join("&"))}function ir(s,e){let t=new URLSearchParams(s),{document:n,problem:i}=mi(s,{key:"line",names:["view","name","open"],read:a=>wa(a,e),what:"line",instead:"Your own lines are shown instead."});return{line:n&&{name:(t.get("name")||"Line from a link").slice(0,en),request:n},open:t.get("open")||null,problem:i}}var G_=["line","line_name"];function Ro(s,e){let t=new URLSearchParams(gn(e,null).fragment);return t.has("line")?{fragment:`${s}&line=${t.get("line")}&line_name=${encodeURIComponent(e.name)}`,whole:!0}:{fragment:s,whole:!1}}function C0(s,e){let n=s.split("&").filter(d=>!G_.includes(d.split("=")[0])).join("&"),i=new URLSearchParams(s);if(!i.has("line"))return{line:void 0,rest:n,problem:""};let r=encodeURIComponent(i.get("line_name")??""),{line:a,problem:l}=ir(`view=line&line=${i.get("line")}&name=${r}`,e);return{line:a,rest:n,problem:l}}var K_=[["all","everything"],["sheets","joint sheets"],["list","list and measurement"],["labels","labels"]],V_="This browser keeps nothing for the page, so the line at hand is the example. Choose a single joint, or open a link that holds your line.",Y_=["station","date"],bn=class extends b({_line:$(c),_paper:$(c),_flowing:$(c)},Le){static view="fitout";static ownNames=["of","shown","station","date","family","adapter_to","name","cable","length_m"];static styles=[_,Ne,M0];constructor(){super(),this._ownLine=c,this._paper="all",this._flowing=!1,this._fitout=this._enquiry("fitout"),this._catalogue=this._enquiry("catalogue")}get _state(){return{...super._state,station:this.station.name}}render(){let{error:e,result:t}=this._fitout;return o`${this._progress(this._fitout)}
      <main @jw-fitout-change=${({detail:n})=>this._change(n.changes)}
        @jw-fitout-own=${()=>this._useOwn()}>
        ${this._bar()} ${this._trouble()}
        <jw-fitout-form class="noprint" .state=${this._state} .line=${this._atHand} .linked=${this._line!==void 0}
          .refusal=${e}></jw-fitout-form>
        ${this._isEmpty?o`<p class="waiting empty quiet">This line has no element yet.</p>`:t?this._answer(t):o`<p class="waiting quiet">${e?e.message:"Calculating…"}</p>`}
      </main>`}_bar(){return o`<div class="bar" role="group" aria-label="Take along">
      <button @click=${this._copy}>Copy link</button>
      <label>On paper <select id="paper" @change=${e=>this._paper=e.target.value}>
        ${K_.map(([e,t])=>o`<option value=${e} .selected=${e===this._paper}>${t}</option>`)}
      </select></label>
      <button id="flowing" aria-pressed=${this._flowing}
        @click=${()=>this._flowing=!this._flowing}>Several joints a page</button>
      <button @click=${()=>window.print()}>Print</button>
      <button @click=${()=>this._reset()}>Reset</button>
      ${this._undoButtons()}
    </div>`}_answer(e){let t=h0(this._catalogue.result),n=[e.station,e.date].filter(Boolean).join(", "),i=Math.min(this._state.shown,e.joints.length);return o`<div class="answer" data-paper=${this._paper} ?data-flowing=${this._flowing}>
      <p class="unseen" role="status"
        >${e.joints.length===1?"One sheet.":`${e.joints.length} sheets.`}</p>
      ${e.joints.length===0?o`<p class="trouble">This line has no joint, so there is nothing to fit but its cable.</p>`:h}
      ${e.joints.length>1?o`<div class="joints" role="group" aria-label="Joints">${e.joints.map(({number:r,label:a,family_name:l})=>o`<button aria-pressed=${r===i}
                  @click=${()=>this._change({shown:r})}>${a.name}, ${l}</button>`)}</div>`:h}
      ${e.joints.map(r=>o`<jw-fitout-sheet ?data-shown=${r.number===i} .sheet=${r} .titles=${t}
            of=${n}></jw-fitout-sheet>`)}
      <jw-fitout-list .result=${e} .titles=${t}></jw-fitout-list>
      <jw-cautions .cautions=${e.cautions}></jw-cautions>
      ${e.joints.length>0?o`<jw-fitout-labels .result=${e}></jw-fitout-labels>`:h}
    </div>`}_trouble(){let{error:e,result:t}=this._fitout;if(!e)return h;let n=this._state.of==="line"?Y_.includes(pn(e)):pn(e)in this.vocabulary.fields.fitout,i=t?"Out of date, these are the sheets from before the last change. ":"";return n&&!i?h:o`<p class="trouble" role="alert">${i}${e.message} <button
      @click=${()=>this._ask(!0)}>Try again</button></p>`}get _atHand(){return this._line??this._ownLine}get _isEmpty(){return this._state.of==="line"&&this._atHand.request.elements.length===0}get _request(){return this._state.of==="line"?er(this._state,tt(this._atHand.request,this.station,this.vocabulary)):m0(this._state,Object.keys(mn(z.requests.fitout)))}_ask(e=!1){if(this._isEmpty)return;let t=JSON.stringify(this._request);!e&&t===this._asked||(this._asked=t,this._fitout.askNext(this._request),["initial","error"].includes(this._catalogue.status)&&this._catalogue.ask({}))}_change({station:e,...t}){e===void 0?super._change(t,{isStep:!("shown"in t)}):this.changeStation({name:e})}_useOwn(){this._line=void 0,this._address(!1)}get _fragment(){return this._line?Ro(super._fragment,this._line).fragment:super._fragment}_restore(e){let{fields:t}=this.vocabulary,{line:n,rest:i,problem:r}=C0(e,t),{unknown:a=[]}=super._restore(i)??{};this._takeName();let l=Pe.recalled(Z,t);return this._ownLine=ve(l.document??Xe),this._line=n,r?{text:r,unknown:a}:l.problem&&!n&&a.length===0?this._lost(l):{unknown:a}}_takeName(){let{station:e,...t}=this._own;e&&(this._own=t,this.stationStore.put({...this.station,name:e}))}_lost({problem:e,spoilt:t}){return t?{text:e,action:{words:"Save them",run:()=>H("jointwise-lines-unread.txt","text/plain",t)}}:{text:V_}}async _copy(){let e=super._fragment,{fragment:t,whole:n}=this._state.of==="line"?Ro(e,this._atHand):{fragment:e,whole:!0};n?await this._copyLink(t):this._notice({text:"This line is too long for a link; export it in the Line view instead."})}};customElements.define("jw-fitout-view",bn);var R0=({bands:s,cables:e,families:t})=>({"fitout.of":{label:"Sheets for",options:{line:"the whole line",joint:"a single joint"}},"fitout.station":{label:"Station"},"fitout.date":{label:"Day of fitting"},"fitout.family":{label:"Family",entries:t},"fitout.adapter_to":{label:"Adapter to",options:oe("no adapter",t)},"fitout.name":{label:"Name on the label"},"fitout.cable":{label:"On this cable",options:oe("no cable",e)},"fitout.length_m":{label:"Length of the cable",unit:"m"},"fitout.power_w":{label:"Power, peak envelope"},"fitout.band":{label:"Band",options:oe("spot frequency",s)},"fitout.frequency_hz":{label:"Spot frequency",factor:1e6,unit:"MHz"}});var z0={id:bn.view,label:"Fit-out",fields:o0,words:R0,upright:!0,element:({transport:s,stage:e})=>o`<jw-fitout-view class="view" .transport=${s} .stage=${e}></jw-fitout-view>`};var N0=({requests:s,parts:e},{cables:t,conditions:n,families:i,modes:r})=>({port:ft(e.Port,{family:i}),owned:ft(e.OwnedAdapter,{one_family:i,other_family:i}),kit:ft(s.kit,{mode:r,condition:n,cable:t})});function rr(s,{settings:e},{fields:t}){let n=Object.keys(e).filter(r=>Object.hasOwn(t.kit,r));return{...Object.fromEntries(n.map(r=>[r,e[r]])),...s}}function L0(s,{settings:e},{fields:t,first:n}){let i=r=>JSON.stringify(s[r])!==JSON.stringify(e[r]??n.settings[r]);return Object.keys(s).filter(r=>Object.hasOwn(t.settings,r)&&i(r))}var P0=(s,e)=>Object.fromEntries(Object.entries(s).filter(([t])=>!e.includes(t)));var Te=(s,e,t)=>`${s.find(({id:n})=>n===e)?.name??e} ${t}`,xs=(s,e)=>e.map(({name:t,family:n,gender:i},r)=>t?e.filter(a=>a.name===t).length>1?`${t} (port ${r+1})`:t:`port ${r+1} (${Te(s,n,i)})`),Ie=([s,e],t)=>`${t[s]} – ${t[e]}`,ar=({highest_frequency_hz:s,power_w:e})=>`up to ${O(s)}, ${e===void 0?"any power":A(e)}`;var $s=class{#e;#t;pixels;constructor(e,t){this.#e=e,this.pixels=t,this.#t=new ResizeObserver(([{contentRect:n}])=>this.#s(Math.round(n.width))),e.addController(this)}hostConnected(){this.#t.observe(this.#e)}hostDisconnected(){this.#t.disconnect()}#s(e){e===0||e===this.pixels||(this.pixels=e,this.#e.requestUpdate())}};var X_=[.5,.42,.58,.34,.66,.27,.73,.2,.8],zo=(s,e,t)=>({x:s.x+(e.x-s.x)*t,y:s.y+(e.y-s.y)*t}),J_=(s,e)=>Math.hypot(s.x-e.x,s.y-e.y);function I0(s,e){return s.length===1?s[0]:I0(s.slice(1).map((t,n)=>zo(s[n],t,e)),e)}var W0=({x:s,y:e})=>`${s.toFixed(1)} ${e.toFixed(1)}`;function Z_([s,...e]){return`M${W0(s)}${e.length===3?"C":"Q"}${e.map(W0).join(" ")}`}function Q_(s,e){let t=Math.min(Math.max(s*48,280),560),n={x:e/2,y:t/2},[i,r]=[e/2-150-10,t/2-44];return{points:Array.from({length:s},(l,d)=>{let u=2*Math.PI*d/s-Math.PI/2,[p,f]=[Math.cos(u),Math.sin(u)],y=Math.abs(p)<.2;return{x:n.x+i*p,y:n.y+r*f,anchor:y?"middle":p>0?"start":"end",label:y?{x:0,y:f<0?-27:22}:{x:p>0?13:-13,y:-3}}}),height:t,curve:(l,d)=>[l,zo(zo(l,d,.5),n,.15),d]}}function ew(s,e,t){let n=Array.from({length:s},(a,l)=>({x:150,y:44*(l+.5),anchor:"end",label:{x:-13,y:-3}})),i=(e-150-22)/.75/t,r=(a,l)=>{let d=150+i*Math.abs(a.y-l.y)/44;return[a,{x:d,y:a.y},{x:d,y:l.y},l]};return{points:n,height:44*s,curve:r}}function B0(s,e,t){let n=Math.max(1,...e.map(([u,p])=>Math.abs(u-p))),{points:i,height:r,curve:a}=t<560?ew(s,t,n):Q_(s,t),l=[],d=e.map(([u,p])=>{let f=a(i[u],i[p]),y=X_.map(v=>I0(f,v)),w=y.find(v=>l.every(S=>J_(S,v)>=26));return l.push(w??y[0]),{path:Z_(f),mark:l.at(-1)}});return{height:r,ports:i,lines:d}}var H0=({joined:s,trap:e})=>`${s?s.adapters.length:"no"}${e?"!":""}`;function F0(s,{pairs:e,joined:t}){let n=e.length-t,i=n===0?"all can be joined":`${t} can be joined, ${n} can’t`,r=e.length===1?"1 pair":`${e.length} pairs`;return`${s} ports and ${r}: ${i}. Every pair is in the list below.`}var tw=720,D0=22,sw=s=>s.length>D0?`${s.slice(0,D0-1)}…`:s,No=class extends b({result:m(c),ports:m(c),names:m(c)},j){static styles=[_,g`
      svg { display: block; width: 100%; height: auto; }
      text { fill: var(--ink); font-size: 12.5px; font-weight: 600; }
      .end { fill: var(--soft); font-size: 11px; font-weight: 400; }
      .dot { fill: var(--card); stroke: var(--ink); stroke-width: 2; }
      .line { fill: none; stroke: var(--edge); stroke-width: 2; }
      [data-added] .line { stroke: var(--accent); stroke-width: 3; }
      [data-apart] .line { stroke: var(--alarm); stroke-dasharray: 5 5; }
      .plate { fill: var(--card); stroke: var(--edge); }
      [data-added] .plate { stroke: var(--accent); }
      [data-apart] .plate { stroke: var(--alarm); }
      .mark { font-size: 11.5px; text-anchor: middle; }
      .legend { margin-top: 6px; }
      @media print { svg { max-height: 110mm; } .legend { font-size: 7.5pt; } }
    `];constructor(){super(),this._width=new $s(this,tw)}render(){let{ports:e,result:t}=this;if(e.length>24)return o`<p class="quiet">More than ${24} ports are not drawn; the list below has every pair.</p>`;let n=B0(e.length,t.pairs.map(i=>i.ports),this._width.pixels);return o`<svg viewBox="0 0 ${this._width.pixels} ${n.height}" role="img"
      aria-label=${F0(e.length,t)}>
        ${n.lines.map(({path:i},r)=>G`<g ?data-added=${this._added(r)} ?data-apart=${this._apart(r)}><path class="line"
              d=${i}></path></g>`)}
        ${n.lines.map(({mark:i},r)=>this._mark(i,r))}
        ${n.ports.map((i,r)=>this._port(i,r))}
      </svg>
      <p class="quiet legend">On a line: how many adapters; 0, they mate as they are. Thick: some of them are to be
        added. Dashed, “no”: can’t be joined.${t.pairs.some(({trap:i})=>i)?" “!”: looks as if it fitted without, and must not be tried.":h}</p>`}_apart(e){return this.result.pairs[e].joined===null}_added(e){let{joined:t,joined_by_owned:n}=this.result.pairs[e];return t!==null&&n===null}_mark({x:e,y:t},n){let i=H0(this.result.pairs[n]),r=10+7*i.length;return G`<g data-line=${this.result.pairs[n].ports.join("-")} ?data-added=${this._added(n)}
      ?data-apart=${this._apart(n)}>
      <rect class="plate" x=${e-r/2} y=${t-9} width=${r} height="18" rx="5"></rect>
      <text class="mark" x=${e} y=${t+4}>${i}</text>
    </g>`}_port({x:e,y:t,anchor:n,label:i},r){let{family:a,gender:l}=this.ports[r];return G`<g>
      <circle class="dot" cx=${e} cy=${t} r="7"></circle>
      <text x=${e+i.x} y=${t+i.y} text-anchor=${n}>${sw(this.names[r])}</text>
      <text class="end" x=${e+i.x} y=${t+i.y+13}
        text-anchor=${n}>${Te(this.vocabulary.lists.families,a,l)}</text>
    </g>`}};customElements.define("jw-kit-graph",No);function Lo({joints:s},[e,t],n){let i=(a,l)=>Te(n,a[`${l}_family`],a[`${l}_gender`]),r=s.slice(1).map((a,l)=>`${i(s[l],"other")}/${i(a,"one")} adapter`);return[`${e}, ${i(s[0],"one")}`,...r,`${i(s.at(-1),"other")}, ${t}`].join(" – ")}var Po=({frequency_hz:s,power_w:e})=>`${O(s)}, ${A(e)}`,Wo=({loss_db:s,return_loss_db:e})=>`loses ${R(s)}, return loss ${e.toFixed(0)} dB at worst`,G0=({joints:s})=>[...new Set(s.flatMap(({notes:e})=>e))],nw=(s,e)=>JSON.stringify(s.adapters)===JSON.stringify(e.adapters);function K0({joined:s,joined_by_owned:e},t,n){return s?e?s.adapters.length===0?"Needs no adapter.":nw(s,e)?"With what you own already.":`With what you own alone: ${Lo(e,t,n)}, ${Wo(e)}.`:"Not with what you own alone.":""}function V0({pairs:s}){let e=new Map;for(let{trap:t,ports:n}of s)t&&e.set(t,[...e.get(t)??[],n]);return[...e].map(([t,n])=>({sentence:t,pairs:n}))}var Y0=({ports:s},{pairs:e})=>{let t=new Set(e.flatMap(n=>n.ports));return s.map((n,i)=>i).filter(n=>!t.has(n))},iw={fewest:"Fewest adapters",best_joints:"Best joints"};function X0({goal:s,added:e,optimal:t,price:n}){let i=(r,a)=>`${a?"":"at most "}${r}`;return Object.entries(iw).map(([r,a])=>{let l=r===s,d=l?i(e,t):i(n.added,n.optimal);return{id:r,isChosen:l,words:`${a}: ${d}`,price:l?"":n.sentence}})}var Io=class extends b({pairs:m(c),names:m(c)},j){static styles=[_,M(W),g`
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
        ol { columns: 2; column-gap: 6mm; }
        li { padding: 0.5mm 0; gap: 0 2mm; }
        h3 { font-size: 8pt; line-height: 1.25; }
        p { font-size: 7pt; line-height: 1.25; }
        .owned { display: none; }
        .chip { padding: 0 4px; font-size: 7.5pt; }
      }
    `];render(){return o`<ol>${this.pairs.map(e=>this._pair(e))}</ol>`}_pair(e){let{joined:t,ports:n,sentence:i,trap:r}=e,{families:a}=this.vocabulary.lists,l=n.map(p=>this.names[p]),d=t?`${Po(e)}: ${Wo(t)}`:Po(e),u=K0(e,l,a);return o`<li data-pair=${n.join("-")}>
      <h3>${Ie(n,this.names)}</h3>
      ${rw(t)}
      <p class="chain">${t?Lo(t,l,a):i}</p>
      <p class="quiet">${d}${u?o`<span class="owned">. ${u}</span>`:h}</p>
      ${r?o`<p class="mind">As they are: ${r}</p>`:h}
      ${t?G0(t).map(p=>o`<p class="mind">${p}</p>`):h}
    </li>`}};function rw(s){if(!s)return o`<span class="chip none">no</span>`;let{margin_db:e}=s;return e===null?o`<span class="chip" data-step="holds">receive</span>`:o`<span class="chip" data-step=${B(e)}>${E(e)} dB</span>`}customElements.define("jw-kit-joins",Io);var Bo=class extends b({result:m(c),answered:m(c),names:m(c)}){static styles=[_,T,g`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; }
      ul { padding-left: 1.1em; font-size: 0.9rem; }
      @media print {
        :host { display: block; }
        .panel { margin-bottom: 2mm; }
        .long { break-inside: auto; }
        /* one sheet: a trap is told at its pair */
        #graph, #traps { display: none; }
        ul { font-size: 8.5pt; }
      }
    `];render(){let{answered:e,names:t,result:n}=this,i=V0(n);return o`<section class="panel" id="graph"><h2>Ports and pairs</h2><jw-kit-graph .result=${n}
      .ports=${e.ports} .names=${t}></jw-kit-graph></section>
      ${i.length>0?o`<section class="panel" id="traps"><h2>Looks as if it fitted <small>and must not be tried</small></h2>
            <ul>${i.map(({sentence:r,pairs:a})=>o`<li><b>${a.map(l=>Ie(l,t)).join("; ")}</b>: ${r}</li>`)}</ul></section>`:h}
      <section class="panel long" id="pairs"><h2>Pair by pair <small>with the smallest margin of its
      joints</small></h2><jw-kit-joins .pairs=${n.pairs} .names=${t}></jw-kit-joins></section>
      <jw-cautions .cautions=${n.cautions}></jw-cautions>`}};customElements.define("jw-kit-answer",Bo);var _n=({one_family:s,one_gender:e,other_family:t,other_gender:n})=>[`${s} ${e}`,`${t} ${n}`].sort().join(" / "),Ho=s=>`${s.from} ${_n(s)}`,J0=new WeakMap;function or(s){let{ticked:e,...t}=s;if(e===void 0)return s;let n=J0.get(s)??t;return J0.set(s,n),n}function Z0(s,e){let[t,n]=[or(s),or(e)],i=Object.keys(t);return i.length===Object.keys(n).length&&i.every(r=>t[r]===n[r])}var aw={add:"to add",own:"yours"},ow=s=>["","common practice"].includes(s),Fo=class extends b({rows:m(c),names:m(c),ticked:m(c)}){static styles=[_,J,g`
      .plain :is(th, td) { vertical-align: middle; }
      .tick { width: 1px; padding-top: 0 !important; padding-bottom: 0 !important; }
      label { display: grid; place-items: center; min-width: var(--target); min-height: var(--target); }
      input { width: 22px; height: 22px; margin: 0; }
      .pairs { display: block; overflow-wrap: anywhere; color: var(--soft); font-weight: 400; font-size: 0.8rem; }
      .from { white-space: nowrap; }
      .plain thead .number { white-space: normal; }
      [data-packed] .what { color: var(--soft); }
      @media print {
        label { min-width: 0; min-height: 0; margin-right: 2mm; }
        input { appearance: none; width: 3.4mm; height: 3.4mm; border: 0.4mm solid var(--ink); border-radius: 0; }
        input:checked::after { content: '✓'; display: block; font-size: 9pt; line-height: 2.6mm; text-align: center; }
        .plain { font-size: 8.5pt; }
        .pairs { display: inline; margin-left: 2mm; font-size: 7.5pt; }
        [data-packed] .what { color: inherit; }
      }
    `];render(){if(this.rows.length===0)return o`<p>No adapter is needed.</p>`;let e=new Set(this.ticked);return o`<table class="plain">
      <thead><tr><th scope="col"><span class="unseen">Packed</span></th><th scope="col">Adapter, and what
        it joins</th><th scope="col" class="number">How many</th><th scope="col">From</th></tr></thead>
      <tbody>${this.rows.map(t=>this._row(t,e.has(Ho(t))))}</tbody>
    </table>`}_row(e,t){let n=({target:r})=>x(this,"jw-kit-edit",{kind:"tick",key:Ho(e),ticked:r.checked}),i=ow(e.kind)?h:o` <span class="quiet">(${e.kind})</span>`;return o`<tr data-from=${e.from} ?data-packed=${t}><td class="tick"><label><input type="checkbox"
        aria-label="Packed: ${e.what}" .checked=${t} @change=${n}></label></td><th
        scope="row"><span class="what">${e.what}</span>${i}${se(e.pack)}
        ${e.stated?o`<small class="quiet">${e.stated}</small>`:h}
        <span class="pairs">${e.pairs.map(r=>Ie(r,this.names)).join("; ")}</span></th>
      <td class="number">${e.count}</td><td class="from">${aw[e.from]}</td></tr>`}};customElements.define("jw-kit-packing",Fo);var Q0=({joined:s},e)=>(s?.adapters??[]).filter(t=>_n(t)===e).length;function lw(s){let e=new Map;for(let t of s){let n=_n(t);e.set(n,{...t,count:(e.get(n)?.count??0)+t.count})}return e}function lr(s,e,t){let n=(d,u)=>Te(t,d[`${u}_family`],d[`${u}_gender`]),i=d=>`${n(d,"one")} to ${n(d,"other")}`,r=d=>s.pairs.filter(u=>Q0(u,d)>0).map(({ports:u})=>u),a=s.adapters.map(d=>({...d,what:d.name,from:"add",pairs:r(_n(d))})),l=[...lw(e.owned??[])].map(([d,u])=>{let p=Math.max(0,...s.pairs.map(f=>Q0(f,d)));return{...u,what:i(u),count:Math.min(u.count,p),from:"own",pairs:r(d),kind:""}});return[...a,...l.filter(({count:d})=>d>0)]}var dw=s=>[["adapter",e=>e.what],["one_family",e=>e.one_family],["one_gender",e=>e.one_gender],["other_family",e=>e.other_family],["other_gender",e=>e.other_gender],["count",e=>e.count],["from",e=>e.from],["joins",e=>e.pairs.map(t=>Ie(t,s)).join("; ")],["known_from",e=>e.kind]],em=(s,e)=>wt(dw(e),s);var Uo=class extends b({result:m(c),answered:m(c),names:m(c),ticked:m(c),outdated:{type:String},searching:{type:Boolean}},j){static styles=[_,T,g`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; }
      #headline { display: block; font-size: 1.15rem; line-height: 1.3; margin-bottom: 2px; }
      #goals { margin: 6px 0 0; padding: 0; border: 0; min-width: 0; }
      #goals label { display: flex; gap: 10px; align-items: center; min-height: var(--target); font-size: 0.9rem; }
      #goals input { flex: none; width: 20px; height: 20px; margin: 0; accent-color: var(--accent); }
      .price { color: var(--soft); }
      .outdated {
        padding: 8px 12px; margin-top: 8px; background: var(--alarm-wash); border: 1px solid var(--alarm);
        border-radius: var(--round);
      }
      .longer { display: flex; gap: 8px; align-items: center; margin: 6px 0; }
      #longer { flex: none; }
      @media print {
        :host { display: block; }
        .panel { margin-bottom: 2mm; }
        #headline { font-size: 10pt; margin-bottom: 0; }
        #goals { margin-top: 0; }
        #goals label { min-height: 0; font-size: 8.5pt; }
        #goals input { display: none; }
        #goals [data-chosen] { display: none; }
        p { font-size: 8.5pt; }
      }
    `];render(){let{answered:e,names:t,result:n}=this,i=Y0(e,n);return o`<section class="panel">
        <div role="status"><p id="verdict"><strong id="headline">${n.headline}</strong>${n.verdict.slice(n.headline.length)}</p></div>
        ${n.added+n.price.added>0?this._goals(n):h}
        ${this._longer(e,n)}
        ${i.length>0?o`<p class="quiet">In no pair: ${i.map(r=>t[r]).join(", ")}.</p>`:h}
        ${this.outdated?o`<p class="outdated" role="alert">${this.outdated}</p>`:h}
      </section>
      <section class="panel" id="packing"><h2>Packing list</h2><jw-kit-packing
        .rows=${lr(n,e,this.vocabulary.lists.families)} .names=${t}
        .ticked=${this.ticked}></jw-kit-packing></section>`}_goals(e){let t=n=>x(this,"jw-kit-edit",{kind:"limit",changes:{goal:n}});return o`<fieldset id="goals"><legend class="unseen">Aim</legend>${X0(e).map(({id:n,isChosen:i,words:r,price:a})=>o`<label ?data-chosen=${i}><input type="radio" name="goal" value=${n}
        .checked=${i} @change=${()=>t(n)}><span><b>${r}</b>${a?o` <span class="price">${a}</span>`:h}</span></label>`)}</fieldset>`}_longer({search:e},{optimal:t}){if(t||e==="thorough")return h;let n=this.searching?"looking for a smaller kit, in this browser":"in this browser, two minutes at most";return o`<p class="longer noprint">
      <button id="longer" ?disabled=${this.searching}
        @click=${()=>x(this,"jw-kit-search")}>Search for longer</button>
      <small role="status">${n}</small>
    </p>`}};customElements.define("jw-kit-verdict",Uo);var tm=(s,e,t)=>s.map((n,i)=>i===e?t:n),Ko=([s,e])=>s<e?[s,e]:[e,s],sm=([s,e],[t,n])=>s-t||e-n,cw=s=>Array.from({length:s},(e,t)=>Array.from({length:s-t-1},(n,i)=>[t,t+1+i])).flat(),dr=({pairs:s,ports:e})=>s??cw(e.length);function Do(s,e){let t=s.ports.map((r,a)=>e.flatMap((l,d)=>l===a?[d]:[])),n=e.map(r=>s.ports[r]);if(!s.pairs)return{...s,ports:n};let i=s.pairs.flatMap(([r,a])=>t[r].flatMap(l=>t[a].map(d=>Ko([l,d]))));return{...s,ports:n,pairs:i.sort(sm)}}var Go=({ports:s})=>s.map((e,t)=>t),uw=(s,e)=>s>=0&&s<e.length,hw={set:(s,{at:e,changes:t})=>({...s,ports:tm(s.ports,e,Ze({...s.ports[e],...t}))}),add:(s,{port:e},{ports:t})=>s.ports.length<t.most?{...s,ports:[...s.ports,e]}:s,duplicate:(s,{at:e},{ports:t})=>s.ports.length<t.most?Do(s,Go(s).toSpliced(e+1,0,e)):s,remove:(s,{at:e})=>Do(s,Go(s).toSpliced(e,1)),move:(s,{at:e,to:t})=>e!==t&&uw(t,s.ports)?Do(s,Go(s).toSpliced(e,1).toSpliced(t,0,e)):s,pairs:({pairs:s,...e},{pairs:t})=>t?{...e,pairs:t}:e,join:(s,{pair:e,joined:t})=>{let n=Ko(e),i=dr(s).map(Ko).filter(([r,a])=>r!==n[0]||a!==n[1]);return{...s,pairs:(t?[...i,n]:i).sort(sm)}},own:(s,{at:e,changes:t})=>({...s,owned:tm(s.owned,e,{...s.owned[e],...t})}),acquire:(s,{adapter:e},{owned:t})=>(s.owned??[]).length<t.most?{...s,owned:[...s.owned??[],e]}:s,discard:(s,{at:e})=>({...s,owned:s.owned.toSpliced(e,1)}),limit:(s,{changes:e})=>Ze({...s,...e}),tick:(s,{key:e,ticked:t})=>{let n=(s.ticked??[]).filter(i=>i!==e);return{...s,ticked:t?[...n,e]:n}},replace:(s,{request:e})=>e},Vo=(s,e,t)=>hw[e.kind](s,e,t);var Ae=(s,e,t,n,i)=>({name:s,family:e,gender:t,highest_frequency_hz:n*1e6,power_w:i}),wn={ports:[Ae("Transceiver","uhf","jack",54,100),Ae("Tuner","uhf","jack",54,100),Ae("Dipole feed line","uhf","plug",30,100),Ae("Dummy load","n","jack",450,100),Ae("Analyser","sma","jack",450,0),Ae("Handheld","sma","plug",450,5),Ae("Vertical","n","jack",450,50),Ae("Link antenna","rp_sma","plug",2450,0),Ae("Patch lead","bnc","plug",450,50),Ae("Receive loop","f","plug",30,0)],pairs:[[0,1],[0,2],[0,3],[1,2],[2,4],[3,5],[3,8],[4,6],[4,7],[4,8],[4,9],[5,6],[5,8]],owned:[{one_family:"uhf",one_gender:"plug",other_family:"bnc",other_gender:"jack",count:1},{one_family:"n",one_gender:"plug",other_family:"bnc",other_gender:"jack",count:1}]},nm={ports:[]},cr=Ae("","n","jack",54,100),im={one_family:"n",one_gender:"plug",other_family:"uhf",other_gender:"jack",count:1};var Yo=class extends b({of:{type:String},what:{type:String}}){static styles=[_,g`
      p {
        display: flex; flex-wrap: wrap; gap: 4px 10px; align-items: center; margin-bottom: 8px;
        padding: 4px 4px 4px 10px;
        background: var(--sunk); border-radius: var(--round); font-size: 0.85rem;
      }
      span { flex: 1 1 12rem; }
      button { font-size: 0.85rem; padding: 0 10px; }
      @media print { button { display: none; } }
    `];constructor(){super(),this.of="",this.what=""}render(){return this.what?o`<p role="note"><span>${this.of} has its own: ${this.what}.</span>
      <button @click=${()=>x(this,"jw-leave")}>Use the station’s</button></p>`:h}};customElements.define("jw-own",Yo);var mw=["one_family","one_gender","other_family","other_gender","count"],Xo=class extends b({owned:m(c),refused:m(c)},j){static styles=[_,g`
      ul { list-style: none; margin: 0; padding: 0; }
      li { padding: 6px 0; border-bottom: 1px solid var(--line); }
      .fields { display: grid; grid-template-columns: 1fr 1fr; gap: 0 12px; align-items: end; }
      .fields > button { justify-self: start; margin-bottom: 1.5rem; }
      button { font-size: 0.85rem; }
      #acquire { margin-top: 8px; }
    `];render(){let{owned:e,refused:t}=this,{most:n}=this.vocabulary.fields.kit.owned;return o`<ul>${e.map((i,r)=>this._row(i,r,t?.at===r?t:void 0))}</ul>
      <button id="acquire" ?disabled=${e.length>=n}
        @click=${()=>x(this,"jw-kit-edit",{kind:"acquire",adapter:im})}>Add an adapter you
        own</button>`}_row(e,t,n){let i=r=>C(this.vocabulary,`owned.${r}`,this.vocabulary.valueOf(e,`owned.${r}`),n?.field===r?n.message:"");return o`<li><div class="fields" role="group" aria-label="Adapter ${t+1}"
      @jw-change=${r=>this._changed(r,t)}>
      ${mw.map(i)}
      <button aria-label="Remove adapter ${t+1}" @click=${()=>this._discard(t)}>Remove</button>
    </div></li>`}_changed(e,t){e.stopPropagation(),e.detail.live||x(this,"jw-kit-edit",{kind:"own",at:t,changes:I(e)})}async _discard(e){x(this,"jw-kit-edit",{kind:"discard",at:e}),await Promise.resolve(),await this.updateComplete;let t=this.renderRoot.querySelectorAll("li button");(t[Math.min(e,t.length-1)]??N(this.renderRoot,"#acquire")).focus()}};customElements.define("jw-kit-owned",Xo);var pw=150,fw=44,Jo=class extends b({request:m(c),names:m(c),refused:m(c)}){static styles=[_,g`
      .every {
        display: flex; gap: 10px; align-items: center; min-height: var(--target); font-weight: 600; font-size: 0.9rem;
      }
      input { width: 22px; height: 22px; margin: 0; }
      .box { display: grid; place-items: center; min-width: var(--target); min-height: var(--target); }
      table { border-collapse: collapse; font-size: 0.85rem; }
      td { padding: 0; border: 1px solid var(--line); }
      th { font-weight: 600; padding: 0 6px 0 0; text-align: left; }
      thead th { padding: 4px 0; vertical-align: bottom; }
      thead span {
        display: block; margin: 0 auto; writing-mode: vertical-rl; rotate: 180deg; max-height: 120px; overflow: hidden;
        text-overflow: ellipsis; white-space: nowrap; line-height: 1.2;
      }
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
    `];constructor(){super(),this._width=new $s(this,0)}render(){let{names:e,request:t,refused:n}=this,i=!t.pairs,r=new Set(dr(t).map(([l,d])=>`${Math.min(l,d)}-${Math.max(l,d)}`)),a=this._width.pixels>=pw+fw*(e.length-1);return o`<label class="every"><input id="every" type="checkbox" .checked=${i}
      aria-invalid=${n?"true":"false"}
        @change=${({target:l})=>this._pairs(l.checked?void 0:dr(t))}> Every two ports</label>
      ${n?o`<p class="error" role="alert">${n.message}</p>`:h}
      ${i?h:a?this._matrix(r):this._list(r)}
      ${i?h:o`<div class="acts"><button id="none" ?disabled=${r.size===0}
            @click=${()=>this._pairs([])}>Untick all</button></div>`}`}_matrix(e){let{names:t}=this,n=t.map((i,r)=>r).slice(1);return o`<table>
      <caption class="unseen">Which ports must join</caption>
      <thead><tr><td class="empty"></td>${n.map(i=>o`<th scope="col" title=${t[i]}><span>${t[i]}</span></th>`)}</tr></thead>
      <tbody>${t.slice(0,-1).map((i,r)=>o`<tr><th scope="row" title=${i}>${i}</th>
          ${n.map(a=>a>r?o`<td><label class="box">${this._box(r,a,e)}</label></td>`:o`<td class="empty"></td>`)}</tr>`)}</tbody>
    </table>`}_list(e){let{names:t}=this;return t.slice(0,-1).map((n,i)=>o`<fieldset><legend>${n} joins</legend><div>
        ${t.map((r,a)=>a>i?o`<label>${this._box(i,a,e)} ${r}</label>`:h)}
      </div></fieldset>`)}_box(e,t,n){let i=`${e}-${t}`;return o`<input type="checkbox" data-pair=${i} aria-label=${Ie([e,t],this.names)}
      .checked=${n.has(i)}
      @change=${({target:r})=>x(this,"jw-kit-edit",{kind:"join",pair:[e,t],joined:r.checked})}>`}_pairs(e){x(this,"jw-kit-edit",{kind:"pairs",pairs:e})}};customElements.define("jw-kit-pairs",Jo);var gw=["name","family","gender","highest_frequency_hz","power_w","impedance_ohm"],Zo=class extends b({port:m(c),name:{type:String},at:{type:Number},count:{type:Number},most:{type:Number},open:{type:Boolean},refused:m(c)},j){static styles=[_,g`
      article { background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      #toggle {
        display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 0 8px; align-items: center; width: 100%;
        min-height: 48px;
        padding: 3px 10px; border: 0; background: none; color: inherit; text-align: left;
      }
      #toggle:hover .name { color: var(--accent); }
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
    `];render(){let{at:e,name:t,port:n,refused:i}=this;return o`<article aria-label=${t}>
      <button id="toggle" aria-expanded=${this.open} @click=${()=>x(this,"jw-kit-toggle",{at:e})}>
        <span><span class="name">${t}</span>
          <span class="sub">${i?o`<span class="error">needs a correction</span>`:ar(n)}</span></span>
        <span class="end">${Te(this.vocabulary.lists.families,n.family,n.gender)}</span>
      </button>
      ${this.open?this._form():h}
    </article>`}_form(){let{at:e,count:t}=this,n=(i,r,a,l)=>o`<button id=${i} ?disabled=${a}
        @click=${()=>x(this,"jw-kit-edit",{at:e,...l})}>${r}</button>`;return o`<div class="fields" @jw-change=${this._changed}>
        ${gw.map(i=>this._field(i))}
      </div>
      <div class="acts">
        ${n("up","Up",e===0,{kind:"move",to:e-1})}
        ${n("down","Down",e===t-1,{kind:"move",to:e+1})}
        ${n("duplicate","Duplicate",t>=this.most,{kind:"duplicate"})}
        ${n("remove","Remove",!1,{kind:"remove"})}
      </div>`}_field(e){let{port:t,refused:n}=this,i=`port.${e}`,r=n?.field===e?n.message:"";return C(this.vocabulary,i,this.vocabulary.valueOf(t,i),r)}get focused(){return this.shadowRoot?.activeElement?.id??""}focusOn(e){let t=e!==""&&this.renderRoot.querySelector(`#${e}:not(:disabled)`)!==null;N(this.renderRoot,t?`#${e}`:"#toggle").focus()}_changed(e){e.stopPropagation(),e.detail.live||x(this,"jw-kit-edit",{kind:"set",at:this.at,changes:I(e)})}};customElements.define("jw-kit-port",Zo);var rm={plug:"plug",male:"plug",jack:"jack",socket:"jack",female:"jack"},bw=["rx","receive"],_w=/^(?:[kMG]?Hz|[mk]?W|watts?)$/i,ww=1e6,yw=4,xw=/ \(pack .*\)$/,$w="as SO-239, PL-259, N jack or SMA plug",yn=s=>s.toLowerCase().replace(/ohms?/g,"ω").replaceAll("Ω","ω").replace(/[^\p{L}\p{N}]/gu,"");function vw({id:s,name:e,also_called:t}){return[e.replace(xw,""),...t].flatMap(n=>{let i=n.split(" / ").map(yn);return i.map((r,a)=>({key:r,family:s,gender:i.length>1?["plug","jack"][a]:void 0}))})}function kw(s,e){let t=new Map(e.flatMap(vw).map(n=>[n.key,n]));return s.flatMap((n,i)=>Array.from({length:Math.min(yw,s.length-i)},(r,a)=>i+a+1).flatMap(r=>{let a=t.get(yn(s.slice(i,r).join("")));if(!a)return[];if(a.gender)return[{...a,from:i,to:r}];let l=rm[yn(s[r]??"")],d=rm[yn(s[i-1]??"")];return l?[{...a,gender:l,from:i,to:r+1}]:[{...a,gender:d,from:d?i-1:i,to:r}]}))}var Sw=s=>s.toSorted((e,t)=>+(t.gender!==void 0)-+(e.gender!==void 0)||t.to-t.from-e.to+e.from)[0];function jw(s){return s.reduce((e,t)=>_w.test(t)&&/^[\d.,]+$/.test(e.at(-1)??"")?[...e.slice(0,-1),`${e.at(-1)}${t}`]:[...e,t],[])}function am(s,e,t,n,{min:i,max:r}){let a=Bt(e,t);if(a.length>1)return{problem:Li(s,e,a)};let l=a[0]?.value*n;return l>=i&&l<=r?{value:l}:{problem:Ni(s,e,`${i/n} to ${r/n} ${t}`,t)}}var Ew=s=>/[wk]$|watts?$/i.test(s)&&Bt(s,"W").length>0,Ow=s=>/[a-z]$/i.test(s)&&Bt(s,"MHz").length>0;function om(s,e,t,n){let i=jw(s.split(/[\s,;]+(?!\d)|\s+/).filter(Boolean)),r=Sw(kw(i,e));if(!r)return{problem:`No connector in “${s.trim()}”; name one, ${$w}.`};let{family:a,gender:l,from:d,to:u}=r;if(!l)return{problem:`“${i.slice(d,u).join(" ")}”: plug or jack?`};let p=i.slice(0,d),f={family:a,gender:l,highest_frequency_hz:n.highest_frequency_hz,power_w:n.power_w},y=new Set;for(let w of i.slice(u)){let v=/^[\d.,]+$/.test(w),S;if(bw.includes(yn(w)))S={field:"power_w",value:0};else if(Ew(w)||v&&y.has("highest_frequency_hz"))S={field:"power_w",...am("Power",w,"W",1,t.power_w)};else if(Ow(w)||v)S={field:"highest_frequency_hz",...am("Used up to",w,"MHz",ww,t.highest_frequency_hz)};else{if(/\d/.test(w))return{problem:`“${w}” after the connector: give the highest frequency in MHz, and the power in W.`};p.push(w);continue}if(S.problem)return{problem:S.problem};if(y.has(S.field))return{problem:`“${w}”: there is one frequency and one power before it already.`};y.add(S.field),f[S.field]=S.value}return{port:{name:p.join(" "),...f}}}var Qo=class extends b({ports:m(c),full:{type:Boolean},_text:$(c),_problem:$(c)},j){static styles=[_,g`
      :host { margin-top: 10px; }
      form { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 6px; }
      label { grid-column: 1 / -1; font-size: 0.85rem; font-weight: 600; }
      p { min-height: 1.4em; margin: 2px 0 4px; }
    `];constructor(){super(),this._text=this._problem=""}render(){return o`<form @submit=${this._add}>
        <label for="typed">Type a port and press Enter</label>
        <input id="typed" autocomplete="off" autocapitalize="off" spellcheck="false" enterkeyhint="done" maxlength="160"
          placeholder="Handheld SMA plug 450 MHz 5 W" aria-describedby="read"
          aria-invalid=${this._problem?"true":"false"} ?disabled=${this.full} .value=${this._text}
          @input=${this._typed}>
        <button ?disabled=${this.full}>Add</button>
      </form>
      <p id="read" class=${this._problem?"error":"quiet"} role="status">${this._problem||this._reading}</p>`}get _reading(){if(this._text.trim()==="")return"Name, connector, highest MHz, watts (0 or “rx” for receive only); left out, as in the port before.";let{port:e}=this._read;if(!e)return"…";let t=Te(this.vocabulary.lists.families,e.family,e.gender);return`${[e.name,t].filter(Boolean).join(": ")}, ${ar(e)}`}get _read(){let{fields:e,lists:t}=this.vocabulary,n=e.port;return om(this._text,t.families,n,this.ports.at(-1)??cr)}_typed({target:e}){this._text=e.value,this._problem=""}_add(e){e.preventDefault();let{port:t,problem:n}=this._read;if(!t){this._problem=n??"";return}this._text="",x(this,"jw-kit-edit",{kind:"add",port:t}),N(this.renderRoot,"#typed").focus()}};customElements.define("jw-kit-typed",Qo);var el=class extends b({ports:m(c),names:m(c),refused:m(c),_open:$(c)},j){static styles=[_,g`
      ol { list-style: none; margin: 0; padding: 0; display: grid; gap: 6px; }
      #add { margin-top: 8px; font-size: 0.85rem; }
    `];constructor(){super(),this._open=-1}willUpdate(e){let{refused:t}=this,n=t?.message===e.get("refused")?.message;e.has("refused")&&t&&!n&&(this._open=t.at??-1)}render(){let{names:e,ports:t,refused:n}=this,{most:i}=this.vocabulary.fields.kit.ports;return o`<ol @jw-kit-toggle=${this._toggled} @jw-kit-edit=${this._edited} @keydown=${this._key}>
        ${t.map((r,a)=>o`<li><jw-kit-port .port=${r} .name=${e[a]} .at=${a} .count=${t.length} .most=${i}
            .open=${a===this._open}
            .refused=${n?.at===a?n:void 0}></jw-kit-port></li>`)}
      </ol>
      <jw-kit-typed .ports=${t} ?full=${t.length>=i}></jw-kit-typed>
      <button id="add" ?disabled=${t.length>=i} @click=${this._add}>Add a port by its fields</button>`}_toggled({detail:{at:e}}){this._open=this._open===e?-1:e}async _edited({detail:e,target:t}){let{at:n,kind:i}=e,r={move:e.to,duplicate:n+1,remove:Math.max(n-1,0)}[i];if(r===void 0)return;let{focused:a}=t;this._open===n&&(this._open=i==="remove"?-1:r),await this._focus(r,i==="remove"?"toggle":a)}async _focus(e,t){await Promise.resolve(),await this.updateComplete;let i=this.renderRoot.querySelectorAll("jw-kit-port")[e];await i?.updateComplete,i?.focusOn(t)}_key(e){let t={ArrowUp:-1,ArrowDown:1}[e.key],n=e.target.closest("jw-kit-port");if(!e.altKey||t===void 0||!n)return;e.preventDefault();let i=n.at+t;i>=0&&i<this.ports.length&&x(n,"jw-kit-edit",{kind:"move",at:n.at,to:i})}_add(){this._open=this.ports.length,x(this,"jw-kit-edit",{kind:"add",port:cr})}};customElements.define("jw-kit-ports",el);var Tw=["most_in_series","most_loss_db","mode","vswr","return_loss_asked_db","impedance_steps"],tl=["exposure","added_sealing","vibration","matings_per_year","service_life_years","condition","added_resistance_ohm","ambient_temperature_c","solar_irradiance_w_per_m2","altitude_m","cable","system_impedance_ohm","transmit_share","on_time_s","off_time_s","power_is","region"],sl=class extends b({request:m(c),own:m(c),names:m(c),refused:m(c),_site:$(c)},j){static styles=[_,T,ue,g`:host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; }
    details { border: 0; }
    .ports { padding: 12px 8px; }
    .ports h2 { padding-left: 6px; }`];willUpdate(e){e.has("refused")&&this.refused?.group==="limits"&&tl.includes(this.refused.field)&&(this._site=!0)}render(){let{names:e,request:t}=this,n=r=>this.refused?.group===r?this.refused:void 0,i=tl.filter(r=>r in t).length;return o`<section class="panel ports"><h2>Ports <small>of your gear, and the ends of its leads</small></h2>
        <jw-kit-ports .ports=${t.ports} .names=${e} .refused=${n("ports")}></jw-kit-ports></section>
      <section class="panel"><h2>Which must join <small>one pair at a time</small></h2>
        <jw-kit-pairs .request=${t} .names=${e} .refused=${n("pairs")}></jw-kit-pairs></section>
      <section class="panel"><h2>Adapters you own</h2>
        <jw-kit-owned .owned=${t.owned??[]} .refused=${n("owned")}></jw-kit-owned></section>
      <section class="panel"><h2>Limits</h2>
        <jw-own of="This kit" what=${this.own.map(r=>this.vocabulary.labelOf(`kit.${r}`)).join(", ")}
          @jw-leave=${()=>x(this,"jw-kit-edit",{kind:"leave",names:this.own})}></jw-own>
        <div class="fields" @jw-change=${this._changed}>${Tw.map(r=>this._field(r))}</div>
        <details ?open=${this._site} @toggle=${({target:r})=>this._site=r.open}>
          <summary>More about station and site${i>0?` (${i} set)`:""}</summary>
          ${this._site?o`<div class="fields" @jw-change=${this._changed}>${tl.map(r=>this._field(r))}</div>`:h}
        </details></section>`}_field(e){let{refused:t,request:n}=this,i=t?.group==="limits"&&t.field===e?t.message:"";return C(this.vocabulary,`kit.${e}`,this.vocabulary.valueOf(n,`kit.${e}`),i)}_changed(e){e.stopPropagation(),e.detail.live||x(this,"jw-kit-edit",{kind:"limit",changes:I(e)})}};customElements.define("jw-kit-form",sl);function Aw(s,e,t){re(s,e,2,2,"ports").find(r=>!Number.isInteger(r)||r<0||r>=t)!==void 0&&F(s,e,`numbers of ports, 0 to ${t-1}`)}var qw=400,Mw=200,ur="cable_dielectric";function hr(s,e){let{ports:t,owned:n,pairs:i,...r}=e.kit,{[ur]:a,...l}=D("kit",s);return re("ports",l.ports,0,t.most,"ports").forEach((d,u)=>{te(`ports[${u}]`,D(`ports[${u}]`,d),e.port)}),l.owned!==void 0&&re("owned",l.owned,n.least,n.most,"adapters").forEach((d,u)=>{te(`owned[${u}]`,D(`owned[${u}]`,d),e.owned)}),l.pairs!==void 0&&re("pairs",l.pairs,i.least,i.most,"pairs").forEach((d,u)=>Aw(`pairs[${u}]`,d,l.ports.length)),l.ticked!==void 0&&re("ticked",l.ticked,0,qw,"rows").forEach((d,u)=>ae(`ticked[${u}]`,d,Mw)),te("",l,r,["ports","owned","pairs","ticked"]),l}var Cw={key:"jointwise-kit",blocked:"This browser keeps nothing for the page: your kit ends when it is closed. Copy its link to keep it.",full:"This browser has no room for your kit: the latest changes are not kept. Copy its link to keep it.",spoilt:"The kit kept in this browser could not be read and was set aside. Save it as a file to look for what is left."},vs=new fe(Cw,hr);var cm=["name","family","gender","highest_frequency_hz","power_w","impedance_ohm"],um=["one_family","one_gender","other_family","other_gender","count"],lm=(s,e)=>{let t=s.map(n=>e[n]??null);return t.slice(0,t.findLastIndex(n=>n!==null)+1)},dm=(s,e)=>Object.fromEntries(s.map((t,n)=>[t,e[n]??null]).filter(([,t])=>t!==null)),Rw=({ports:s,owned:e,ticked:t,...n})=>({...n,ports:s.map(i=>lm(cm,i)),...e?.length>0&&{owned:e.map(i=>lm(um,i))}}),zw=({ports:s,owned:e,...t})=>({...t,ports:s.map(n=>dm(cm,n)),...e&&{owned:e.map(n=>dm(um,n))}}),xn=s=>hi("view=kit","kit",Rw(s));function hm(s,e){let{document:t,problem:n}=mi(s,{key:"kit",names:["view"],unfolded:zw,read:r=>({request:hr(r,e),isOfThePast:ur in r}),what:"kit",instead:"Your own is shown instead."}),i=t?.isOfThePast?ci([ur]):"";return{request:t?.request,problem:[n,i].filter(Boolean).join(" ")}}function Nw(s){let e=s?.field??"",t=/^(ports|owned)\[(\d+)\](?:\.(\w+))?/.exec(e);return t?{group:t[1],at:Number(t[2]),field:t[3]??""}:/^pairs\b/.test(e)?{group:"pairs",field:""}:{group:e===""?"":"limits",field:e}}var mm=s=>s&&{...Nw(s),message:s.message};var Lw="This kit is too long for a link; the browser keeps it, and the packing list can be saved as CSV.",$n=class extends b({_said:$(c)},mt){static view="kit";static ownNames=["kit"];static styles=[_,Ne,g`
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
    `];constructor(){super(),this._said="",this._told="",this._isNew=!0,this._kit=this._enquiry("kit"),this._document=c,this._request=this._settled=c}_begin(){this._document=new ze(vs,Z,this.vocabulary.fields,this._firstKit),this._document.attach(this,e=>{this.stationStore.change(this._name,{},{before:e,after:this._own}),this._notice({text:"Another tab changed the kit; Undo brings back the one that was here."}),this._settle()}),this._request=this._settled=this._wholeKit}get _own(){return this._document.present}set _own(e){this._document.put(e)}get _firstKit(){let{gear:e}=this.station;return e.length>=this._least?{ports:e}:wn}get _least(){return this.vocabulary.fields.kit.ports.least}_fromGear(){let{owned:e}=this._own;this._edit({kind:"replace",request:{ports:this.station.gear,...e&&{owned:e}}})}get _wholeKit(){let e=[this._own,this.station],t=this._parts;return(!t||e.some((n,i)=>n!==t[i]))&&(this._parts=e,this._whole=rr(this._own,this.station,this.vocabulary)),this._whole}render(){let{answered:e,error:t,result:n}=this._kit,i=this._wholeKit,r=xs(this.vocabulary.lists.families,i.ports),a=mm(t);return o`${this._progress(this._kit)}
      <main @jw-kit-edit=${({detail:l})=>this._edit(l)} @jw-kit-search=${this._search}>
        ${this._bar(n,e)}
        ${a?.group===""?o`<p class="trouble" role="alert">${a.message} <button
              @click=${()=>this._ask(!0)}>Try again</button></p>`:h}
        <jw-kit-form class="noprint" .request=${i} .own=${L0(this._own,this.station,this.vocabulary)}
          .names=${r} .refused=${a}></jw-kit-form>
        ${n?this._answer(n,e,a):o`<p class="waiting ${this._lacksPorts?"empty":""} ${a?"error":"quiet"}">
                ${a?.message??this._waitingWords}</p>`}
      </main>
      <p class="unseen" role="status">${this._said}</p>`}_answer(e,t,n){let i=xs(this.vocabulary.lists.families,t.ports),r=n?`Out of date, this is the answer from before the last change. ${n.message}`:"";return o`<div class="answer">
      <h2 class="onpaper">Adapters to carry</h2>
      <p class="onpaper">${this._limits(t)}</p>
      <jw-kit-verdict .result=${e} .answered=${t} .names=${i} .outdated=${r}
        .ticked=${this._document.present.ticked??[]}
        .searching=${this._isSearching}></jw-kit-verdict>
      <jw-kit-answer .result=${e} .answered=${t} .names=${i}></jw-kit-answer>
    </div>`}_bar(e,t){let n=()=>H("jointwise-packing-list.csv","text/csv",em(lr(e,t,this.vocabulary.lists.families),xs(this.vocabulary.lists.families,t.ports)));return o`<div class="bar" role="group" aria-label="Undo and take along">
      ${this._undoButtons()}
      <button @click=${this._copy}>Copy link</button>
      <button ?disabled=${!e} @click=${n}>CSV</button>
      <button @click=${()=>window.print()}>Print</button>
      <button @click=${()=>this._edit({kind:"replace",request:wn})}>Example</button>
      <button id="empty" @click=${()=>this._edit({kind:"replace",request:nm})}>Start empty</button>
      ${this.station.gear.length>0?o`<button id="gear" @click=${this._fromGear}>From the station’s gear</button>`:h}
    </div>`}_limits({ports:e,pairs:t,owned:n,...i}){let r=this.vocabulary.first.kit,a={most_in_series:r.most_in_series,most_loss_db:r.most_loss_db,...i},l=Object.entries(a).map(([d,u])=>`${this.vocabulary.labelOf(`kit.${d}`)}: ${this.vocabulary.spoken(`kit.${d}`,u)}`);return[`${e.length} ports`,...l].join(" · ")}get _lacksPorts(){return this._request.ports.length<this._least}get _waitingWords(){return this._lacksPorts?"Type the ports of your gear; from the second on the answer stands here.":"Calculating…"}get _isSearching(){return this._kit.status==="pending"&&this._asked?.search==="thorough"}_ask(e=!1){let t=or(this._request);if(this._lacksPorts){this._asked=void 0,this._kit.status!=="initial"&&this._kit.forget();return}let n=this._asked===void 0&&t===this._kit.answered;(e||t!==this._asked&&!n)&&this._kit.askNext(t),this._asked=t}_search(){this._request={...this._wholeKit,search:"thorough"},this.requestUpdate()}_edit(e){let{own:t,changes:n}=this._parted(e);t===this._own&&!n||(this._put(t,n,{isEntry:!1}),this._said=e.kind==="move"?`Moved to place ${e.to+1}.`:"",this._settle())}_parted(e){let{fields:t}=this.vocabulary,n=a=>Object.hasOwn(t.settings,a);if(e.kind==="leave")return{own:P0(this._own,e.names)};if(e.kind!=="limit"||!Object.keys(e.changes).some(n))return{own:Vo(this._own,e,t.kit)};let i=Object.keys(e.changes).filter(a=>a in this._own),r=Object.fromEntries(i.map(a=>[a,null]));return{own:i.length>0?Vo(this._own,{kind:"limit",changes:r},t.kit):this._own,changes:{settings:this._settings(e.changes)}}}turn(e){let t=super.turn(e);return t&&(this._said=e==="undo"?"Undone.":"Done again."),this._settle(),t}_stationChanged(e){super._stationChanged(e),this._begun&&this._settle()}_settle(){Z0(this._wholeKit,this._settled)||(this._isSearching&&this._kit.cancel(),this._request=this._settled=this._wholeKit),this._address(!0),this._tellTrouble(),this.requestUpdate()}get _fragment(){return xn(this._own).fragment}_restore(e,t){let{request:n,problem:i}=hm(e,this.vocabulary.fields),r=t&&(!this._isNew||this._document.wasKept),a=n&&!r?this._take(n):"";return this._isNew=!1,this._settle(),{text:[i,a].filter(Boolean).join(" ")}}_take(e){return xn(e).fragment===xn(this._own).fragment?"":(this._put(e),"The kit of this link is shown; Undo brings back the one before.")}_tellTrouble(){let{problem:e,spoilt:t}=this._document;if(e===this._told)return;this._told=e;let n=t&&{words:"Save it",run:()=>H("jointwise-kit-unread.txt","text/plain",t)};this._notice(e&&{text:e,action:n})}async _copy(){let{whole:e}=xn(this._own);e?await this._copyLink():this._notice({text:Lw})}};customElements.define("jw-kit-view",$n);var nl={plug:"plug (has the nut)",jack:"jack"},pm=({families:s})=>({"port.name":{label:"What it is"},"port.family":{label:"Family",entries:s},"port.gender":{label:"Plug or jack",options:nl},"port.highest_frequency_hz":{label:"Used up to",factor:1e6,unit:"MHz"},"port.power_w":{label:"Power, peak envelope"},"port.impedance_ohm":{label:"Impedance, UHF types only"},"owned.one_family":{label:"One end",entries:s},"owned.one_gender":{label:"Plug or jack",options:nl},"owned.other_family":{label:"Other end",entries:s},"owned.other_gender":{label:"Plug or jack",options:nl},"owned.count":{label:"How many"},"kit.most_in_series":{label:"Most adapters in series"},"kit.most_loss_db":{label:"Most loss of a pair"},"kit.impedance_steps":{label:"50 Ω may meet 75 Ω"},"kit.goal":{label:"Aim",options:{fewest:"fewest adapters",best_joints:"best joints"}},"kit.search":{label:"Search",options:{quick:"quick",thorough:"for a minute"}}});var fm={id:$n.view,label:"Kit",fields:N0,words:pm,upright:!0,element:({transport:s,stage:e})=>o`<jw-kit-view class="view" .transport=${s} .stage=${e}></jw-kit-view>`};var Pw={arrester:"Arrester",switch:"Switch",meter:"Meter",attenuator:"Attenuator",filter:"Filter",divider:"Divider"},vn=(s,e)=>s.find(t=>t.id===e)?.name??e;function Ww(s,{cables:e,families:t,wire_lines:n}){if(s.name)return s.name;switch(s.kind){case"cable":return`${be(s.length_m)} of ${vn(e,s.cable)}`;case"joint":return s.adapter_to?`${vn(t,s.family)} to ${vn(t,s.adapter_to)}`:vn(t,s.family);case"wires":return`${be(s.length_m)} of ${vn(n,s.line)}`;case"tuner":return"Tuner";case"transformer":return"Transformer";case"section":return`${be(s.length_m)} section of ${k(s.impedance_ohm)} Ω`;case"measured":return"Measured part"}return Pw[s.what]??"Part"}var gm=({elements:s},e)=>s.map(t=>Ww(t,e));var mr=({format:s,version:e,key:t},n)=>({format:s,version:e,[t]:n});function pr({format:s,version:e,key:t},n,i){let r;try{r=JSON.parse(n)}catch{throw new RangeError(`The file is no JSON; allowed: a file of ${t} exported here.`)}return r?.format!==s&&F("format",r?.format,`"${s}"`),r.version!==e&&F("version",r.version,`${e}`),i(r[t])}var _m={format:"jointwise lines",version:1,key:"lines"},wm=s=>mr(_m,s),ym=(s,e)=>pr(_m,s,t=>gi(t,e));var xm={export:async s=>ps("jointwise-lines.json",wm(s.lines)),print:async()=>window.print()};async function $m(s,e){try{return{edit:{kind:"insert",lines:ym(await s.text(),e)}}}catch(t){if(!(t instanceof RangeError))throw t;return{notice:{text:`${s.name} is refused: ${t.message} Nothing was changed.`}}}}var vm={..._s,rating:"Rated power"},km=s=>vm[s],Vt=s=>vm[s].toLowerCase();function Sm(s,e,t){return s?s.elements[t]===e?t:s.elements.indexOf(e):-1}var il=(s,e)=>s.parts.filter(t=>t.element===e),ks=({element:s,kind:e,name:t})=>e==="load"?t:`${s+1}. ${t}`,ke=s=>s===null?"–":k(s,3),jm=([s,e])=>`reads SWR ${ke(s)} to ${ke(e)}`;function Iw(s){return s.tuner?s.tuner.reachable?"matched":"can’t match this":s.reads_vswr?jm(s.reads_vswr):""}var Bw=s=>s[0].toLowerCase()+s.slice(1),Hw=({henry:s,farad:e})=>s===null?P(e??0,"F",3):P(s,"H",3);function kn(s){if(s.tuner){let e=s.tuner.parts.map(Hw).join(", ");return[`${s.name}: ${Bw(s.tuner.sentence)}${e?` Set to ${e}, from the transmitter on.`:""}`]}return s.reads_vswr?[`The meter ${jm(s.reads_vswr)}, by how good its bridge is.`]:[]}var Fw=(s,e)=>s.filter(t=>t[e]!==null).sort((t,n)=>t[e]-n[e])[0];function Em(s,e){let t=il(s,e),n=t.find(a=>a.refused_by),i=Fw(t,"margin_db"),r=t.map(a=>a.loss_db).filter(a=>a!==null);return{margin:n?null:i?.margin_db??null,loss:r.length<t.length?null:r.reduce((a,l)=>a+l,0),refusal:n?.refusal??"",limited:n||!i?"":Vt(i.binding),undecided:t.some(a=>a.undecided),brief:t.map(Iw).find(Boolean)??"",says:t.flatMap(kn),marks:[...new Set(t.flatMap(a=>a.marks))],weakest:s.weakest!==null&&t.includes(s.parts[s.weakest])}}var Ss=s=>s.refused_by?"refused":s.margin_db===null?"–":`${E(s.margin_db)} dB`;function Om(s,e){let t=s.refused_by?`refused: ${s.refusal}`:s.margin_db===null||s.binding===null?"no margin":`margin ${E(s.margin_db)} dB, limited by ${Vt(s.binding)}`,n=e?", the weakest part":"";return s.kind==="load"?`${s.name}: ${t}${n}`:`${s.name}: ${t}, loses ${R(s.loss_db)}${n}. Open its derivation`}function Tm({bands:[s]}){let[e,,,,t]=s.vswr,n=i=>i===null?"without bound":k(i,3);return`On ${s.column.name} the SWR at the transmitter is ${n(e)} to ${n(t)} in nine of ten; by the root of the sum of squares ${n(s.likely_vswr)}, at the worst ${n(s.worst_vswr)}.`}var js="Likely",xt="At worst",Yt=s=>s===null?"–":P(s,"W",3);function fr({resistance_ohm:s,reactance_ohm:e}){return s===null||e===null?"":`${k(s,3)} ${e<0?"−":"+"} j ${k(Math.abs(e),3)} Ω`}var Sn=(s,e)=>s===null||e===null?null:Math.max(s,e),Uw=(s,e)=>Sn(s.vswr,e.vswr)===s.vswr?s:e;function Xt(s){let{input:e}=s,t=Uw(s.input_cautious,e),n=[fr(e),fr(t)];return[...s.power_w>0?[{id:"delivered",term:"At the antenna",likely:Yt(s.delivered_w),worst:Yt(s.delivered_low_w)}]:[],{id:"loss",term:"Loss of the line",likely:R(s.loss_db),worst:R(s.loss_high_db)},{id:"swr",term:"SWR at the transmitter",likely:ke(e.vswr),worst:ke(t.vswr)},...n.some(Boolean)?[{id:"impedance",term:"Impedance there",likely:n[0],worst:n[1]}]:[]]}var Am=({likely:s,worst:e})=>s===e?s:`${s}, at worst ${e}`;var Dw={start:66,joint:62,end:84},Gw=86,rl=["cable","wires","section"],qm={least:76,perRootMetre:17},Kw=3,Vw=6.4;function Yw({kind:s,length_m:e},t){return rl.includes(s)?{width:Math.min(qm.least,t),more:qm.perRootMetre*Math.sqrt(e)}:{width:Math.min(Dw[s]??Gw,t),more:0}}function Xw(s,e){let t=[],n=0;for(let i of s){let r=Yw(i,e);(t.length===0||r.width>n)&&(t.push([]),n=e),t.at(-1).push({...i,...r}),n-=r.width}return t}function Jw(s,e,t){let n=l=>s.reduce((d,u)=>d+u[l],0),i=n("more");if(i===0)return s;let r=(e-n("width"))/i,a=t?Math.min(r,Kw):r;return s.map(l=>({...l,width:l.width+a*l.more}))}function Mm(s,e){let t=Xw(s,e);return{items:t.flatMap((i,r)=>{let a=0;return Jw(i,e,r===t.length-1).map(l=>{let d={...l,x:a,y:r*128,row:r};return a+=l.width,d})}),rows:t.length,height:t.length*128}}function Cm(s,e){let t=Math.max(Math.floor(e/Vw),4),n=r=>r.length>t?`${r.slice(0,t-1)}…`:r;if(s.length<=t)return[s];let i=s.lastIndexOf(" ",t);return i<=0?[n(s)]:[s.slice(0,i),n(s.slice(i+1))]}var Zw=720,zm={measured:"m-12 6l6 -10l6 7l6 -9l6 6",transformer:"m-5 -9q9 3 0 6q9 3 0 6q9 3 0 6m10 -18q-9 3 0 6q-9 3 0 6q-9 3 0 6",tuner:"m-14 0h6q2 -8 4 0q2 -8 4 0q2 -8 4 0h10m-4 0v9",load:"m-12 0h3l2 -6l4 12l4 -12l4 12l2 -6h5"},Nm=56,al=class extends b({result:m(c),elements:m(c),open:{type:String},_width:$(c)}){static styles=[_,g`
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
      .weakest { fill: none; stroke: var(--ink); stroke-width: 3; }
      .weak { font-weight: 700; font-size: 11px; }
      .refused { fill: var(--refused); }
    `];constructor(){super(),this._width=Zw,this._sizes=new ResizeObserver(([{contentRect:e}])=>{e.width>0&&(this._width=Math.round(e.width))})}connectedCallback(){super.connectedCallback(),this._sizes.observe(this)}disconnectedCallback(){super.disconnectedCallback(),this._sizes.disconnect()}render(){let{parts:e}=this.result,t=[{kind:"start"},...e.map(i=>({kind:i.kind,length_m:this.elements[i.element]?.length_m})),...e.at(-1)?.kind==="load"?[]:[{kind:"end"}]],n=Mm(t,this._width);return o`<svg viewBox="0 0 ${this._width} ${n.height}" role="group"
      aria-label="The line from the transmitter to the antenna">
      ${n.items.map((i,r)=>this._wire(i,n.items[r+1]))}
      ${n.items.map((i,r)=>this._item(i,e[r-1],r-1))}
    </svg>`}_wire({x:e,y:t,width:n,row:i},r){let a=e+n;if(!r)return h;let[l,d]=[e+n/2,r.x+r.width/2];if(r.row===i)return G`<path class="wire" d="M${l} ${t+56}H${d}"></path>`;let[u,p]=[t+128-1,r.y+56];return G`<path class="wire turn" d="M${l} ${t+56}H${a-3}V${u}H3V${p}H${d}"></path>`}_item(e,t,n){let i=e.x+e.width/2,r=e.y+56;if(e.kind==="start")return this._end(i,e.y,"Transmitter",this._sent(),Qw(i,r));if(e.kind==="end")return this._end(i,e.y,"Antenna",this._delivered(),e5(i,r));let a=n===this.result.weakest,l=t.margin_db===null||t.refused_by?void 0:B(t.margin_db),[d,u]=l===void 0?["var(--refused)","var(--refused-ink)"]:[`var(--step-${l})`,`var(--step-${l}-ink)`],p=String(t.element)===this.open,f=Cm(`${ks(t)}`,e.width-6),y=e.y+30-13*(f.length-1),w=()=>x(this,"jw-line-open",{open:String(t.element)}),v=G`<title>${Om(t,a)}</title>
      <rect class="hit" x=${e.x+1} y=${e.y+2} width=${e.width-2} height=${120} rx="8"></rect>
      ${f.map((S,q)=>G`<text class="name" x=${i} y=${y+13*q}>${S}</text>`)}
      ${this._body(e,i,r,d)}
      ${a?G`<rect class="weakest" x=${e.x+4} y=${r-19} width=${e.width-8} height="60" rx="8"></rect>`:h}
      <rect x=${i-Nm/2} y=${r+17} width=${Nm} height="20" rx="5" style="fill:${d}"></rect>
      <text class="margin" x=${i} y=${r+31} style="fill:${u}">${Ss(t).replace(" dB","")}</text>
      <text class="soft" x=${i} y=${r+53}>
        ${t.kind==="load"?this._delivered()[0]:R(t.loss_db)}
      </text>
      ${a?G`<text class="weak" x=${i} y=${r+67}>weakest</text>`:h}`;return t.kind==="load"?G`<g data-part=${n}>${v}</g>`:G`<g class="part" role="button" tabindex="0" data-part=${n} ?data-open=${p}
        @click=${w} @keydown=${S=>["Enter"," "].includes(S.key)&&(S.preventDefault(),w())}>
      ${v}
    </g>`}_body(e,t,n,i){let r=`fill:${i}`;if(rl.includes(e.kind)){let[l,d]=[e.x+4,e.x+e.width-4];return e.kind==="wires"?G`<rect style=${r} x=${l} y=${n-6} width=${d-l} height="12"></rect>
          <path class="body" d="M${l} ${n-6}H${d}M${l} ${n+6}H${d}"></path>`:G`<rect class="body" style=${r}
        x=${l} y=${n-6} width=${d-l} height="12" rx=${e.kind==="cable"?6:0}></rect>`}if(e.kind==="joint")return G`<path class="body" style=${r}
          d="M${t-15} ${n-8}h11v-5h8v5h11v16h-11v5h-8v-5h-11z"></path>
        <path class="body" d="M${t} ${n-13}v26"></path>`;let a=e.kind in zm?G`<path class="wire" d="M${t} ${n}${zm[e.kind]}"></path>`:h;return G`<rect class="body" style=${r}
      x=${t-19} y=${n-14} width="38" height="28" rx="3"></rect>${a}`}_end(e,t,n,i,r){let[a,l]=i;return G`<g>
      <text class="name" x=${e} y=${t+30}>${n}</text>${r}
      <text class="margin" x=${e} y=${t+56+31}>${a}</text>
      ${l?G`<text class="soft" x=${e} y=${t+56+47}>${l}</text>`:h}
    </g>`}_sent(){let{power_w:e,transmitter:t}=this.result;return t.folded?[P(t.forward_w,"W",2),`of ${A(t.set_w)}`]:[A(e)]}_delivered(){let{delivered_w:e,delivered_low_w:t,power_w:n,loss_db:i}=this.result;if(n===0)return[R(i)];let[r,a]=[Yt(e),Yt(t)];return r===a?[r]:[r,`worst ${a}`]}};function Qw(s,e){return G`<rect class="own" x=${s-19} y=${e-14} width="38" height="28" rx="4"></rect>
    <path class="wire" d="M${s-9} ${e}q4.5 -11 9 0t9 0"></path>`}function e5(s,e){return G`<path class="own"
    d="M${s} ${e+12}V${e-4}M${s-14} ${e-20}L${s} ${e-4}L${s+14} ${e-20}Z"></path>`}customElements.define("jw-line-drawing",al);var t5="Likely by the figures of good parts, at worst by the cautious ones.",s5="The phase of the antenna’s SWR is unknown: likely is the middle of all phases, at worst is the worst of them, as the line’s length may put the standing wave.",ol=class extends b({result:m(c),outdated:{type:String}}){static styles=[_,M(W),g`
      .verdict { display: flex; gap: 14px; align-items: center; }
      b.chip {
        padding: 10px 12px; border-radius: var(--round); font-size: 1.4rem; line-height: 1; white-space: nowrap;
      }
      b.none { background: var(--refused); color: var(--refused-ink); font-size: 1rem; }
      .sides + .quiet { margin-top: 4px; }
      .note { margin-top: 8px; color: var(--soft); font-size: 0.9rem; }
      .held { margin-top: 8px; padding-left: 10px; border-left: 4px solid var(--alarm); }
      .sides { width: auto; min-width: min(100%, 420px); margin-top: 12px; font-size: 0.95rem; }
      .sides td { font-weight: 650; }
      .sides th { font-weight: 400; }
      .sides :is(th, td).number { padding-left: 10px; }
      .facts {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(130px, 1fr)); gap: 8px 14px; margin-top: 12px;
      }
      dt { color: var(--soft); font-size: 0.78rem; }
      dd { font-weight: 650; }
      dd small { display: block; font-weight: 400; line-height: 1.25; color: var(--soft); font-size: 0.78rem; }
      .outdated {
        margin-bottom: 8px; padding: 8px 12px; border: 1px dashed var(--alarm); border-radius: var(--round);
        color: var(--alarm); font-size: 0.9rem;
      }
    `];render(){let{result:e}=this,{folded:t,sentence:n}=e.transmitter;return o`${this.outdated?o`<p class="outdated">${this.outdated}</p>`:h}
      <div class="verdict">
        ${e.margin_db===null?o`<b class="chip none">${this._instead()}</b>`:o`<b class="chip" data-step=${B(e.margin_db)}>${E(e.margin_db)} dB</b>`}
        <p id="verdict" role="status">${e.verdict}</p>
      </div>
      ${n?o`<p id="transmitter" class=${t?"held":"note"}>${n}</p>`:h}
      ${e.parts.map(i=>this._said(i))}
      ${e.notes.map(i=>o`<p class="note">${i}</p>`)}
      ${this._sides()}
      <p class="quiet">${this.result.phase_known?t5:s5}</p>
      <dl class="facts">
        ${this._facts().map(([i,r,a])=>o`<div><dt>${i}</dt><dd>${r} ${a?o`<small>${a}</small>`:h}</dd></div>`)}
      </dl>`}_instead(){let{parts:e,power_w:t}=this.result;return e.some(n=>n.refused_by)?"refused":t===0?"receive":"no limit"}_said(e){let t=e.tuner&&!e.tuner.reachable;return kn(e).map(n=>o`<p class=${t?"held":"note"} data-said=${e.kind}>${n}</p>`)}_sides(){return o`<table class="plain sides">
      <thead>
        <tr>
          <td></td><th scope="col" class="number">${js}</th><th scope="col" class="number">${xt}</th>
        </tr>
      </thead>
      <tbody>
        ${Xt(this.result).map(({id:e,term:t,likely:n,worst:i})=>o`<tr data-side=${e}>
            <th scope="row">${t}</th><td class="number">${n}</td><td class="number">${i}</td>
          </tr>`)}
      </tbody>
    </table>`}_facts(){let{result:e}=this,{folded:t}=e.transmitter,{largest_power_w:n,largest_power_set_by:i}=e,r=i===null?void 0:e.parts[i];return[["SWR at the antenna",ke(e.antenna.vswr),e.phase_known?fr(e.antenna):"phase unknown"],...e.mismatch_db>0?[[t?"Held back and reflected":"Reflected",R(e.mismatch_db),"at the transmitter"]]:[],...e.margin_db===null?[]:[["Margin",n5(e.margin_db,e.margin_high_db),"by how good the parts are"]],["Largest safe power",n===null?"none":A(Je(n,3)),r?`set by ${r.name}`:""],["At",O(e.frequency_hz),e.column.name]]}},n5=(s,e)=>E(s)===E(e)?`${E(s)} dB`:`${E(s)} to ${E(e)} dB`;customElements.define("jw-line-verdict",ol);var ll=class extends b({result:m(c),answered:m(c),outdated:{type:String},open:{type:String}}){static styles=[_,T,g`:host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; min-width: 0; }`];render(){let{result:e,answered:t}=this;return o`<section class="panel">
        <h2 class="unseen">Answer</h2><jw-line-verdict .result=${e} .outdated=${this.outdated}></jw-line-verdict>
      </section>
      <section class="panel">
        <h2>The line drawn <small>a tap on a part opens its derivation</small></h2>
        <jw-line-drawing .result=${e} .elements=${t.elements} .open=${this.open}></jw-line-drawing>
        <p class="legend quiet">Under each part its margin in dB, coloured as in the matrix, and what it loses.</p>
      </section>`}};customElements.define("jw-line-answer",ll);var Lm=s=>s,i5=globalThis.trustedTypes?.createPolicy("jointwise-formula",{createHTML:Lm})??{createHTML:Lm},dl=new Map;function gr(s){if(!dl.has(s)){let e=document.createElement("template");e.innerHTML=i5.createHTML(s),e.content.querySelector("math")?.setAttribute("display","block"),dl.set(s,e)}return dl.get(s).content.cloneNode(!0)}var Pm={alpha:"α",beta:"β",gamma:"γ",Gamma:"Γ",delta:"δ",Delta:"Δ",epsilon:"ε",eps:"ε",eta:"η",theta:"θ",kappa:"κ",lambda:"λ",lamda:"λ",mu:"µ",pi:"π",rho:"ρ",sigma:"σ",tau:"τ",phi:"φ",chi:"χ",psi:"ψ",omega:"ω"};function Wm(s){let[e,...t]=s.split("_");return[Pm[e]??e,t.map(n=>Pm[n]??n).join(", ")]}function jn(s){let[e,t]=Wm(s);return o`<var>${e}${t?o`<sub>${t}</sub>`:""}</var>`}function Os(s){for(let e of s)e.scrollWidth>e.clientWidth?e.tabIndex=0:e.removeAttribute("tabindex")}var cl=class extends b({catalogue:m(c)}){static styles=[_,g`
      article { margin-top: 14px; padding-top: 14px; border-top: 1px solid var(--line); }
      .formula { overflow-x: auto; padding: 8px 0; font-size: 1.1rem; }
      li { padding: 3px 0; font-size: 0.85rem; }
    `];updated(){Os(this.renderRoot.querySelectorAll(".formula"))}render(){let{formulas:e,sources:t}=this.catalogue;return o`<p>
        The margin of a cell is the smallest of three limits: heat of the contact, heat of the cable, and voltage. The
        match is no limit of power: a joint whose return loss is less than asked for is refused. Each number on the page
        comes from the formulas below, and a cell’s derivation shows them with the values put in. A value with differing
        sources is a range: its cautious end decides.
      </p>
      ${e.map(n=>this._formula(n))}
      <h3>Sources</h3>
      <ul>
        ${t.map(n=>o`<li>${we(n)} <span class="kind">${n.seen}</span></li>`)}
      </ul>`}_formula(e){let t=this.catalogue.sources.find(({id:n})=>n===e.source);return o`<article data-formula=${e.id}>
      <h3>${e.title}</h3>
      <div class="formula">${gr(e.mathml)}</div>
      <table class="plain">
        <tbody>
          ${e.symbols.map(n=>o`<tr>
              <td>${jn(n.symbol)}</td><td>${n.meaning}</td><td>${n.unit==="1"?"":n.unit}</td>
            </tr>`)}
        </tbody>
      </table>
      <p class="quiet">Valid: ${e.validity}. Source: ${t?we(t):e.source}.</p>
    </article>`}};customElements.define("jw-methods",cl);var ul=class extends b({steps:m(c),catalogue:m(c)}){static styles=[_,J,g`
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
    `];updated(){Os(this.renderRoot.querySelectorAll(".formula"))}render(){let e=this.steps.filter(t=>t.end==="high");return o`${gs()==="us"?o`<p class="quiet">The working is in SI units.</p>`:h}
      ${this._list(this.steps.filter(t=>t.end!=="high"))}
      ${e.length>0?o`<details class="more">
            <summary>The same with the most generous credible figures (${e.length} steps)</summary>
            ${this._list(e)}
          </details>`:h}`}_list(e){return o`<ol>
      ${e.map(t=>this._step(t))}
    </ol>`}_step(e){let t=this.catalogue?.formulas.find(({id:n})=>n===e.formula);return o`<li data-formula=${e.formula}>
      <div class="title">
        <strong>${t?.title??e.formula}</strong>
        ${e.purpose?o`<span class="quiet">${e.purpose}</span>`:h}
      </div>
      ${t?o`<div class="formula">${gr(t.mathml)}</div>`:h}
      <table class="plain">
        <tbody>
          ${e.inputs.map(n=>this._input(n))}
        </tbody>
      </table>
      <p class="result">${jn(e.result.symbol)} = ${P(e.result.value,e.result.unit)}</p>
    </li>`}_input(e){let t=this.catalogue?.sources.find(({id:i})=>i===e.source),n=Vi(e.source,this.catalogue?.packs);return o`<tr>
      <td>${jn(e.symbol)} = ${P(e.value,e.unit)}</td>
      <td>
        ${e.meaning}
        ${e.kind?o`<span class="kind">${e.kind}</span>`:h}${se(n)}
        ${t?o`<br><span class="quiet">${we(t)}</span>`:h}
      </td>
    </tr>`}};customElements.define("jw-steps",ul);var hl=class extends b({parts:m(c),steps:m(c),catalogue:m(c)}){static styles=[_,J,M(W),g`
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
      .scroll { overflow-x: auto; }
      h3 { margin-bottom: 6px; }
    `];render(){return o`${this.parts.map(e=>this._part(e))}
      <section>
        <h3>Steps</h3>
        ${this._steps()}
      </section>`}_steps(){return this.steps?this.steps.length===0?o`<p class="quiet">
        Nothing more is derived for it: its figures are those given, measured, or solved with the whole line.
      </p>`:o`<jw-steps .steps=${this.steps} .catalogue=${this.catalogue}></jw-steps>`:o`<p class="quiet" role="status">Calculating…</p>`}_part(e){let t=e.binding?`limited by ${Vt(e.binding)}`:"",n=e.undecided?"; sources differ on which side of the limit it lies":"",i=e.margin_db===null;return o`<section>
      <div class="head">
        <span class=${i?"chip none":"chip"}
          data-step=${i?"none":B(e.margin_db)}>${Ss(e)}</span>
        <p><strong>${e.name}</strong>${se(e.pack)} ${t}${n}</p>
      </div>
      <dl class="facts">
        ${this._facts(e).map(([r,a])=>o`<div><dt>${r}</dt><dd>${a}</dd></div>`)}
      </dl>
      ${[e.refusal,...kn(e),...e.marks].filter(Boolean).map(r=>o`<p class="note">${r}</p>`)}
      ${e.tuner?this._setting(e.tuner):h}${this._limits(e)}
    </section>`}_setting({parts:e}){let t=(n,i)=>n===null?"–":P(n,i,3);return o`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Set to</th><th scope="col" class="number">Value</th>
          <th scope="col" class="number">Peak</th><th scope="col" class="number">Current</th>
          <th scope="col" class="number">Heat</th>
        </tr>
      </thead>
      <tbody>
        ${e.map(({what:n,place:i,henry:r,farad:a,peak_voltage_v:l,current_a:d,lost_w:u})=>o`<tr>
            <th scope="row">${n}, ${i}</th>
            <td class="number">${n==="coil"?t(r,"H"):t(a,"F")}</td>
            <td class="number">${t(l,"V")}</td><td class="number">${t(d,"A")}</td>
            <td class="number">${t(u,"W")}</td>
          </tr>`)}
      </tbody>
    </table></div>`}_limits(e){let t=Object.keys(e.margin_by_limit_db);return t.length===0?h:o`<table class="plain">
      <thead><tr><th scope="col">Limit</th><th scope="col" class="number">Margin</th></tr></thead>
      <tbody>${t.map(n=>this._limit(n,e))}</tbody>
    </table>`}_limit(e,t){let n=t.margin_by_limit_db[e];return o`<tr data-limit=${e}>
      <th scope="row">${km(e)}${e===t.binding?", the smallest":""}</th>
      <td class="number">
        ${n===null?o`<span class="quiet">no margin</span>`:o`<span class="small" data-step=${B(n)}>${E(n)} dB</span>`}
      </td>
    </tr>`}_facts(e){let t=(i,r,a)=>r===null?X(i,a,3):`${X(i,a,3)} of ${X(r,a,3)}`;return[["Loss as the waves stand",e.loss_db===null?void 0:`${R(e.loss_db)}, ${P(e.lost_w??0,"W",3)}`],["Loss between matched ends",e.tuner?void 0:R(e.matched_loss_db)],["Margin between",e.margin_db===null?void 0:`${E(e.margin_db)} and ${E(e.margin_high_db)} dB`],["Peak voltage",e.peak_voltage_v===null?void 0:t(e.peak_voltage_v,e.allowed_voltage_v,"V")],["Peak current",e.peak_current_a===null?void 0:P(e.peak_current_a,"A",3)],["Hottest place",e.temperature_c===null?void 0:t(e.temperature_c,e.allowed_temperature_c,"°C")],["Return loss of it alone",e.return_loss_db===null?void 0:P(e.return_loss_db,"dB",3)],["SWR into it",e.vswr===null?void 0:ke(e.vswr)],["Forward, reflected",e.forward_w===null?void 0:`${P(e.forward_w,"W",3)}, ${P(e.reflected_w,"W",3)}`],["Largest safe power",e.largest_power_w===null?"none known":A(Je(e.largest_power_w,3))],["From the transmitter",be(e.distance_m,4)]].filter(([,i])=>i!==void 0)}};customElements.define("jw-line-derivation",hl);var ml=class extends b({element:{type:Number},answered:m(c),result:m(c),current:{type:Boolean},catalogue:m(c),error:m(c)}){static styles=[_];render(){let{catalogue:e,result:t}=this,n=o`<p role="status">${this.error?.message??"Calculating…"}</p>`;if(this.element===void 0)return e?o`<jw-methods .catalogue=${e}></jw-methods>`:n;if(!t)return n;let i=il(t,this.element),r=this.current&&this.answered.explain===this.element?t.steps:void 0;return o`<jw-line-derivation .parts=${i} .steps=${r} .catalogue=${e}></jw-line-derivation>`}};customElements.define("jw-line-detail",ml);var Im=5,Bm=.05,pl=class extends b({result:m(c),current:{type:Boolean},compared:m(c),after:m(c)}){static styles=[_,M(W),g`
      ol { list-style: none; margin: 0; padding: 0; }
      li { padding: 8px 0; border-top: 1px solid var(--line); }
      ol:first-child > li:first-child { border-top: 0; padding-top: 0; }
      .row { display: grid; grid-template-columns: minmax(0, 1fr) auto auto; gap: 2px 12px; align-items: center; }
      .what { font-weight: 600; }
      .cost { display: block; font-weight: 400; color: var(--soft); font-size: 0.85rem; }
      .gain { text-align: right; font-size: 0.9rem; }
      .gain b { white-space: nowrap; }
      .gain span { display: block; color: var(--soft); font-size: 0.78rem; }
      button { font-size: 0.85rem; padding: 0 11px; }
      .use { background: var(--accent); border-color: var(--accent); color: var(--accent-ink); font-weight: 600; }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; color: var(--accent); font-size: 0.9rem;
        border-top: 1px solid var(--line);
      }
      .beside { margin: 8px 0 4px; padding: 10px; background: var(--sunk); border-radius: var(--round); }
      .scroll { overflow-x: auto; }
      .plain td { font-weight: 650; }
      .plain td small { display: block; font-weight: 400; color: var(--soft); }
      .chip { padding: 2px 8px; border-radius: 5px; font-weight: 700; white-space: nowrap; }
      .chip.none { background: var(--refused); color: var(--refused-ink); }
      .acts { display: flex; flex-wrap: wrap; gap: 6px; margin-top: 8px; }
      @media (max-width: 480px) {
        .row { grid-template-columns: minmax(0, 1fr) auto; }
        .row .what { grid-column: 1 / -1; }
        .gain { text-align: left; }
        .gain :is(b, span) { display: inline; }
      }
      @media print { button, details { display: none; } }
    `];render(){let{changes:e}=this.result,t=e.filter(({same:r})=>!r),n=e.filter(r=>r.same),i=t.slice(Im);return e.length===0?o`<p class="quiet">Nothing in the catalogue would do better here.</p>`:o`${t.length===0?o`<p>Nothing in the catalogue would make a difference.</p>`:h}
      ${this._list(t.slice(0,Im))}
      ${this._folded(i,`${i.length} more`)}
      ${this._folded(n,`${n.length} that ${n.length===1?"makes":"make"} no difference`)}`}_list(e){return e.length===0?h:o`<ol>${e.map(t=>this._item(t))}</ol>`}_folded(e,t){return e.length===0?h:o`<details class="more"><summary>${t}</summary>${this._list(e)}</details>`}_item(e){let t=e===this.compared,n=()=>x(this,"jw-line-compare",t?{}:{change:e});return o`<li data-change=${e.title}>
      <div class="row">
        <p class="what">${e.title}
          ${e.costs.length>0?o`<span class="cost">${e.costs.join("; ")}</span>`:h}</p>
        <p class="gain">${this._gain(e)}</p>
        <button aria-expanded=${t} ?disabled=${!this.current&&!t} aria-label="Compare: ${e.title}"
          @click=${n}>Compare</button>
      </div>
      ${t?this._beside(e):h}
    </li>`}_gain({gained_db:e,gained_low_db:t,gained_high_db:n,margin_gained_db:i,same:r}){let a=e!==null&&Math.abs(e)>=Bm,l=i===null||Math.abs(i)<Bm?"":`${E(i)} dB margin`;return r?o`<b>no difference</b> <span>${[Hm(t,n),l].filter(Boolean).join("; ")}</span>`:!a&&l?o`<b>${l}</b>`:o`<b>${e===null?"–":`${E(e)} dB`}</b>
      <span>${[Hm(t,n),l].filter(Boolean).join("; ")}</span>`}_beside(e){let{result:t,problem:n}=this.after;return o`<div class="beside" role="group" aria-label="Before and after">
      ${t?this._table(this.result,t):o`<p class=${n?"error":"quiet"} role="status">${n??"Calculating…"}</p>`}
      <div class="acts">
        <button class="use" ?disabled=${!this.current||n!==void 0}
          @click=${()=>x(this,"jw-line-take",{change:e})}>Use this</button>
        <button @click=${()=>x(this,"jw-line-compare",{})}>Leave it</button>
      </div>
    </div>`}_table(e,t){let[n,i]=[Xt(e),Xt(t)],r=({likely:d,worst:u})=>o`${d} <small>at worst ${u}</small>`,a=(d,u,p)=>o`<tr><th scope="row">${d}</th><td>${u}</td><td>${p}</td></tr>`,l=n.flatMap(d=>{let u=i.find(({id:p})=>p===d.id);return d.id==="impedance"||!u?[]:[a(d.term,r(d),r(u))]});return o`<div class="scroll"><table class="plain" aria-label="${js}, and ${xt.toLowerCase()}">
      <thead><tr><td></td><th scope="col">As it stands</th><th scope="col">With the change</th></tr></thead>
      <tbody>
        ${l}${a("Smallest margin",Fm(e),Fm(t))}
        ${a("Weakest part",Um(e),Um(t))}
      </tbody>
    </table></div>`}},Hm=(s,e)=>s===null||e===null?"":`${E(s)} to ${E(e)} dB`,Fm=({margin_db:s})=>s===null?o`<span class="chip none">none</span>`:o`<span class="chip" data-step=${B(s)}>${E(s)} dB</span>`,Um=({weakest:s,parts:e})=>s===null?"–":e[s].name;customElements.define("jw-line-changes",pl);var ce={displayModeBar:!1,responsive:!0,showTips:!1},Y={ink:"#16212b",soft:"#51606d",line:"#d9d6cf",band:"#1f5690",accent:"#7a2b66"},Ts=s=>s.replace(/^rgb\((.*)\)$/,"rgba($1, 0.18)").replace(/^#.*$/,"rgba(31, 86, 144, 0.18)");function Dm({cell:s,limit:e,along:t,colours:n=Y}){let{curves:i}=s,r=t==="frequency",a=r?i.frequency_hz:i.power_w,l=i[`margin_by_${t}_db`][e.id],d=i[`margin_high_by_${t}_db`][e.id],u=r?s.frequency_hz:s.power_w,p=`%{y:+.1f} dB at %{x:.4s}${r?"Hz":"W"}`,f=u>0&&e.margin_db!==null,{yaxis:y,...w}=Zm({x:r?"frequency, Hz":"power, W",y:`${e.name.toLowerCase()}: margin, dB`,colours:n});return{data:[...Vm({x:a,low:l,high:d,hover:p,colours:n}),...f?[Xm(u,e.margin_db,n,"%{y:+.1f} dB")]:[]],layout:{...w,yaxis:{...y,tickformat:"+d"},shapes:[fl(n)]},config:ce}}function Gm({cell:s,colours:e=Y}){let{curves:t,frequency_hz:n,match:i}=s;return{data:[...Vm({x:t.frequency_hz,low:t.return_loss_by_frequency_db,high:t.return_loss_high_by_frequency_db,hover:"%{y:.1f} dB at %{x:.4s}Hz",colours:e}),Xm(n,i.return_loss_db,e,"%{y:.1f} dB")],layout:{...Zm({x:"frequency, Hz",y:"return loss, dB",colours:e}),shapes:[Jm(i.asked_db,e)]},config:ce}}var Km=s=>`Return loss of ${s.family.name} alone against frequency; the cell is marked, the ${s.match.asked_db} dB asked for is a line across`;function Vm({x:s,low:e,high:t,hover:n,colours:i}){let r=(a,l,d)=>({x:s,y:a,name:l,type:"scatter",mode:"lines",line:{color:i.band,width:2},hovertemplate:`${n}<extra>${l}</extra>`,...d});return[r(t,"generous",{line:{color:i.band,width:1,dash:"dot"}}),r(e,"cautious",{fill:"tonexty",fillcolor:Ts(i.band)})]}function Ym({cell:s,limit:e,along:t}){let n=t==="frequency"?"at the cell’s power":"at the cell’s frequency";return`${e.name}: margin of ${s.family.name} against ${t}, ${n}; the cell is marked`}var Xm=(s,e,t,n)=>({x:[s],y:[e],name:"this cell",type:"scatter",mode:"markers",cliponaxis:!1,marker:{color:t.accent,size:11,symbol:"diamond"},hovertemplate:`${n}<extra>this cell</extra>`}),r5=260;function he({x:s,y:e,colours:t,height:n=r5}){let i=r=>({title:{text:r,standoff:8},gridcolor:t.line,linecolor:t.soft,zeroline:!1,fixedrange:!0,automargin:!0});return{height:n,margin:{l:52,r:12,t:10,b:44},font:{color:t.ink,size:12,family:"system-ui, sans-serif"},paper_bgcolor:"rgba(0,0,0,0)",plot_bgcolor:"rgba(0,0,0,0)",xaxis:i(s),yaxis:i(e),showlegend:!1,dragmode:!1,hovermode:"closest"}}var Jm=(s,e)=>({type:"line",xref:"paper",x0:0,x1:1,y0:s,y1:s,line:{color:e.ink,width:1.5}}),fl=s=>Jm(0,s);function Zm({x:s,y:e,colours:t}){let n=he({x:s,y:e,colours:t});return{...n,xaxis:{...n.xaxis,type:"log",exponentformat:"SI",dtick:1}}}var Qm=matchMedia("(prefers-color-scheme: dark)"),ep=660,gl=class extends b({figure:m(c),label:{type:String},load:m(c),_error:$(c)}){static styles=[_,g`
      figure { height: var(--chart, 260px); position: relative; overflow: hidden; }
      .swatch { display: none; }
      .ink { color: var(--ink); } .soft { color: var(--soft); } .line { color: var(--line); }
      .band { color: light-dark(#1f5690, #86adcf); } .accent { color: var(--accent); }
      .main-svg { position: absolute; top: 0; left: 0; pointer-events: none; }
      .main-svg .draglayer { pointer-events: all; }
      @media print { :host { break-inside: avoid; } }
    `];constructor(){super(),this._redraw=()=>this._draw(),this._redrawLight=()=>this._draw(Y,{width:Math.min(this._place?.clientWidth||ep,ep)}),this._redrawWide=()=>this._draw().then(()=>this._place?.clientWidth&&this._library?.Plots.resize(this._place)),this._theme=new MutationObserver(this._redraw),this._drawn=Promise.resolve()}connectedCallback(){super.connectedCallback(),Qm.addEventListener("change",this._redraw),window.addEventListener("beforeprint",this._redrawLight),window.addEventListener("afterprint",this._redrawWide),this._theme.observe(document.documentElement,{attributeFilter:["data-theme"]}),this.hasUpdated&&this._draw()}disconnectedCallback(){super.disconnectedCallback(),Qm.removeEventListener("change",this._redraw),window.removeEventListener("beforeprint",this._redrawLight),window.removeEventListener("afterprint",this._redrawWide),this._theme.disconnect();let{_library:e,_place:t}=this;this._drawn.then(()=>this.isConnected||e?.purge(t))}render(){return this._error?o`<p class="error">${this._error}</p>`:o`${Object.keys(Y).map(e=>o`<i class="swatch ${e}"></i>`)}
      <figure role="img" aria-label=${this.label}></figure>`}updated(e){e.has("figure")&&this._draw()}get _place(){return this.renderRoot.querySelector("figure")}get _colours(){let t=Object.keys(Y).map(n=>[n,getComputedStyle(N(this.renderRoot,`.${n}`)).color]);return Object.fromEntries(t)}async _draw(e,t={}){try{this._library||(this._library=await this.load())}catch(l){this._error=l.message;return}if(!this.isConnected||!this._place)return;let{data:n,layout:i,config:r}=this.figure(e??this._colours),a=this._library.react(this._place,n,{...i,...t},r);this._drawn=Promise.allSettled([this._drawn,a]).then(()=>{}),await a}};customElements.define("jw-chart",gl);var _l="Whole line",a5=24,o5=70,[wl,tp]=[.08,.84],l5=({transmitter:{folded:s}})=>s?"Held back and reflected":"Reflected at the transmitter";function yl(s){let e=[...s.mismatch_db>0?[{name:l5(s),loss:s.mismatch_db}]:[],...s.parts.filter(({kind:i})=>i!=="load").map(i=>({name:ks(i),loss:i.loss_db??0}))],t=0;return[...e.map(i=>{let r={...i,from:t};return t+=i.loss,r}),{name:_l,from:0,loss:s.loss_db??t},...s.loss_high_db===null?[]:[{name:`${_l}, at worst`,from:0,loss:s.loss_high_db}]]}function sp(s,e=Y){let t=yl(s),n=t.map((r,a)=>a),i=he({x:"loss, dB",y:"",colours:e,height:t.length*a5+o5});return{data:[{type:"bar",orientation:"h",y:n,base:t.map(({from:r})=>r),x:t.map(({loss:r})=>r),marker:{color:t.map(({name:r})=>r.startsWith(_l)?e.ink:e.band)},text:t.map(({loss:r})=>R(r)),textposition:"outside",cliponaxis:!1,customdata:t.map(({name:r})=>r),hovertemplate:"%{customdata}: %{text}<extra></extra>"}],layout:{...i,margin:{...i.margin,r:64},xaxis:{...i.xaxis,rangemode:"tozero"},yaxis:{...i.yaxis,autorange:"reversed",tickvals:n,ticktext:t.map(({name:r})=>d5(r)),showgrid:!1}},config:ce}}var d5=s=>s.length>22?`${s.slice(0,21)}…`:s;function c5({sweep:s,bands:e}){let t=s.band.filter(i=>i===s.band[0]).length,n=s.band.map((i,r)=>{let a=r%t;return Math.floor(r/t)+wl+tp*a/Math.max(t-1,1)});return{count:t,x:n,names:e.map(({column:i})=>i.name)}}var bl=(s,e)=>s.flatMap((t,n)=>n%e===e-1?[t,null]:[t]);function u5(s,e,t){if(e===null||t===null)return{x:[],y:[]};let[n,i]=[s+wl,s+wl+tp];return{x:[n,i,i,n,n,null],y:[e,e,t,t,e,null]}}function h5(s,e,t,n){let i=e.bands.map(r=>{let a=s.bands.findIndex(({column:l})=>l.id===r.column.id);return u5(a,r[t][0],r[t].at(-1))});return{type:"scatter",mode:"lines",fill:"toself",fillcolor:Ts(n.band),line:{width:0},x:i.flatMap(({x:r})=>r),y:i.flatMap(({y:r})=>r),hoverinfo:"skip"}}function np({result:s,spread:e,key:t,title:n,colours:i=Y}){let{count:r,x:a,names:l}=c5(s),d=he({x:"",y:n,colours:i,height:280}),u=s.bands.findIndex(({column:y})=>y.id===s.column.id),p=t==="margin_db",f=(y,w,v="")=>({type:"scatter",mode:"lines",x:bl(a,r),y:bl(y,r),connectgaps:!1,line:{color:i.band,...w},customdata:bl(s.sweep.frequency_hz.map(O),r),hovertemplate:`%{y:${p?"+":""}.2f}${p?" dB":""}${v} at %{customdata}<extra></extra>`});return{data:[...e?[h5(s,e,t,i)]:[],...p?[]:[f(ip(s),{width:1.5,dash:"dot"}," at worst")],f(s.sweep[t],{width:2.5})],layout:{...d,xaxis:{...d.xaxis,tickvals:l.map((y,w)=>w+.5),ticktext:l,tickangle:-90,range:[0,l.length],showgrid:!1},yaxis:{...d.yaxis,...p?{tickformat:"+d"}:f5(s)},shapes:[...p?[fl(i)]:[],...u===-1?[]:[g5(u,i)]]},config:ce}}var m5=10,p5=.9;function xl(s){let e=ip(s),t=e.filter((i,r)=>s.sweep.band[r]===s.column.id),n=Math.max(m5,...t.map(i=>1.2*(i??0)));return e.some(i=>i===null||i>n)?n:void 0}function f5(s){let e=xl(s);return e?{range:[p5,e]}:{rangemode:"normal"}}var ip=({sweep:s})=>s.vswr.map((e,t)=>Sn(e,s.vswr_high[t])),g5=(s,e)=>({type:"rect",layer:"below",xref:"x",yref:"paper",x0:s,x1:s+1,y0:0,y1:1,line:{width:1,color:e.accent,dash:"dot"}});function b5(s){let e=s.standing_wave.distance_m.at(-1)??0;return[...new Set([...s.parts.map(({distance_m:t})=>t),e])]}var _5=1.4,w5=10,rp=({standing_wave:{half_waves:s}})=>s>w5;function ap(s,e=Y){let{distance_m:t,voltage_v:n,current_a:i,voltage_low_v:r,current_low_a:a}=s.standing_wave,{unit:l,shown:d}=le("m"),u=t.map(d),p=he({x:`from the transmitter, ${l}`,y:"peak voltage, V",colours:e}),f={color:e.ink,width:2,dash:"dash"},y=(w,v,S)=>({type:"scatter",mode:"lines",x:u,y:w,hovertemplate:`%{y:.3g} ${S} at %{x:.3g} ${l}<extra></extra>`,...v});return{data:[...r?[y(r,{line:{color:e.band,width:1.2}},"V")]:[],y(n,{line:{color:e.band,width:2.5},...r&&{fill:"tonexty",fillcolor:Ts(e.band)}},"V"),...a?[y(a,{line:{...f,width:1},yaxis:"y2"},"A")]:[],y(i,{line:f,yaxis:"y2"},"A")],layout:{...p,margin:{...p.margin,r:56},yaxis:{...p.yaxis,rangemode:"tozero",title:{text:"peak voltage, V (solid)",font:{color:e.band}}},yaxis2:{...p.yaxis,overlaying:"y",side:"right",range:[0,_5*Math.max(0,...i)||1],showgrid:!1,tickmode:"auto",title:{text:"peak current, A (dashed)",font:{color:e.ink}}},shapes:b5(s).map(d).map(w=>({type:"line",yref:"paper",x0:w,x1:w,y0:0,y1:1,line:{color:e.soft,width:1,dash:"dot"}}))},config:ce}}var $l=class extends b({result:m(c),spread:m(c),drawing:{type:Number},failure:{type:String},load:m(c)}){static styles=[_,g`
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
    `];willUpdate(e){let{result:t,spread:n}=this;if(e.has("result")&&(this._loss=i=>sp(t,i),this._wave=i=>ap(t,i)),e.has("result")||e.has("spread")){let i=(r,a)=>l=>np({result:t,spread:n,key:r,title:a,colours:l});this._margin=i("margin_db","smallest margin, dB"),this._vswr=i("vswr","SWR at the transmitter")}}render(){let{result:e}=this,t=(yl(e).length+1)*24+70,n=Am({likely:R(e.loss_db),worst:R(e.loss_high_db)}),[i,r,a,l]=[`Loss of each part, adding up to ${n}; the same numbers stand in the table of all numbers`,`Peak voltage and current along the line${this._isRange?", the most and the least at each place":""}; ends of the elements marked; largest ${this._largest()}`,`Smallest margin of the line on every band, dB; the chosen band is outlined${this._shaded}`,`SWR at the transmitter on every band; the chosen band is outlined${this._shaded}`];return o`<section>
        <h3>Where the loss goes</h3>
        <jw-chart id="loss" style="--chart:${t}px" .figure=${this._loss} .load=${this.load}
          label=${i}></jw-chart>
      </section>
      <section>
        <h3>Wave along the line at ${O(e.frequency_hz)}</h3>
        <jw-chart id="wave" .figure=${this._wave} .load=${this.load} label=${r}></jw-chart>
        <p class="quiet">${this._why()} Upright lines mark where one element ends and the next begins.</p>
      </section>
      ${e.power_w>0?o`<section>
            <h3>Smallest margin over the bands</h3>
            <jw-chart id="margin" style="--chart:280px" .figure=${this._margin} .load=${this.load}
              label=${a}></jw-chart>
          </section>`:h}
      <section>
        <h3>SWR over the bands</h3>
        <jw-chart id="vswr" style="--chart:280px" .figure=${this._vswr} .load=${this.load}
          label=${l}></jw-chart>
        <p class="quiet">At the transmitter: solid what is likely, dotted the worst.${this._beyond()}</p>
      </section>
      <div class="spread">${this._spread()}</div>`}_beyond(){let e=xl(this.result);return e?` Above ${k(e,2)} it leaves the chart.`:""}get _isRange(){return this.result.standing_wave.voltage_low_v!==null}_why(){return this._isRange?rp(this.result)?`The line is ${Math.round(this.result.standing_wave.half_waves)} half waves long, too many crests to draw: shown are the largest and the least of each half wave, shaded between. A Smith chart would go round as often, so none is drawn.`:"Where the crests stand hangs on the phase at the antenna, which is unknown: shaded is what may come.":""}get _shaded(){return this.spread?", the spread shaded":""}_largest(){let{voltage_v:e,current_a:t}=this.result.standing_wave;return e.length===0?"unknown, as there is no cable":`${k(Math.max(...e),3)} V and ${k(Math.max(...t),3)} A`}_spread(){let{spread:e}=this,t=e?`The curves are those of the lengths as given. Shaded: nine of ten of ${e.draws.toLocaleString("en")} lines drawn at random within what is not known (electrical lengths, phases, tolerance of joints). ${Tm(e)}`:"",n=(i,r)=>o`<button id="spread" @click=${()=>x(this,"jw-line-spread",{begin:r})}>${i}</button>`;if(this.drawing>0){let i=this.drawing.toLocaleString("en");return o`<p class="quiet" role="status">${t} Drawing ${i} lines at random…</p>
        ${n("Stop",!1)}`}return o`<p class="quiet" role="status">${this.failure||t||"No spread is drawn."}</p>
      ${e&&e.draws>=1e4?h:n("Draw the spread",!0)}`}};customElements.define("jw-line-charts",$l);var br=(s,e)=>s===null?"–":X(s,e,3),op=(s,e,t)=>s===null||e===null?br(s,t):`${gt(s,t,3)} of ${Pt(e,t,3)}`,lp=[["From",s=>be(s.distance_m,4)],["Loss",s=>R(s.loss_db)],["Heat",s=>br(s.lost_w,"W")],["SWR",s=>ke(s.vswr)],["Peak voltage",s=>op(s.peak_voltage_v,s.allowed_voltage_v,"V")],["Peak current",s=>br(s.peak_current_a,"A")],["Return loss",s=>br(s.return_loss_db,"dB")],["Hottest",s=>op(s.temperature_c,s.allowed_temperature_c,"°C")]],vl=class extends b({result:m(c)}){static styles=[_,J,M(W),g`
      .scroll { overflow-x: auto; }
      .plain { min-width: 900px; }
      tfoot :is(th, td) { font-weight: 650; }
      .chip { padding: 2px 7px; border-radius: 5px; font-weight: 700; }
      @media print { .plain { font-size: 7.5pt; min-width: 0; } }
    `];render(){return o`<div class="scroll" tabindex="0" role="group" aria-label="All numbers"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Part</th>${lp.map(([e])=>o`<th scope="col" class="number">${e}</th>`)}
          <th scope="col" class="number">Margin</th><th scope="col">Limited by</th>
        </tr>
      </thead>
      <tbody>
        ${this.result.parts.map((e,t)=>this._row(e,t))}
      </tbody>
      <tfoot>${this._whole()}</tfoot>
    </table></div>`}_whole(){let{result:e}=this,t=(i,r,a,l,d)=>o`<tr>
      <th scope="row">Whole line, ${i.toLowerCase()}</th>
      <td></td><td class="number">${R(r)}</td><td></td><td class="number">${ke(a)}</td>
      <td colspan="4">${e.power_w>0?`${Yt(l)} at the antenna`:""}</td>
      <td class="number">${d===null?"–":`${E(d)} dB`}</td><td></td>
    </tr>`,n=Sn(e.input.vswr,e.input_cautious.vswr);return o`${t(js,e.loss_db,e.input.vswr,e.delivered_w,e.margin_high_db)}
      ${t(xt,e.loss_high_db,n,e.delivered_low_w,e.margin_db)}`}_row(e,t){let n=e.refused_by||e.margin_db===null?"none":B(e.margin_db);return o`<tr data-part=${t}>
      <th scope="row">${ks(e)}${se(e.pack)}</th>
      ${lp.map(([,i])=>o`<td class="number">${i(e)}</td>`)}
      <td class="number"><span class="chip" data-step=${n}>${Ss(e)}</span></td>
      <td>${e.binding?Vt(e.binding):""}${t===this.result.weakest?", weakest":""}</td>
    </tr>`}};customElements.define("jw-line-numbers",vl);var y5=1e5,x5=.1;function $5(s){let{whole_cost_by_band_db:e,half_decibel_cost_by_band_db:t}=s.reception,n=s.bands.map(({column:l,loss_db:d},u)=>({id:l.id,name:l.name,loss:d,cost:e[u],half:t[u]})).filter(({loss:l,cost:d})=>l!==null&&d!==null&&l>0),i=(l,d)=>n.find(u=>u.id===l)??d,[r,a]=[i("40m",n[0]),i("70cm",n.at(-1))];return r&&a&&r!==a?[r,a]:[]}function dp({name:s,loss:e,cost:t}){let n=Math.abs(t)<x5?"nothing one would notice":`${t.toFixed(1)} dB`;return`on ${s} this line loses up to ${e.toFixed(1)} dB and costs ${n} on receive (${R(t)})`}function cp(s){let[e,t]=$5(s);return e?`${v5(dp(e))}; ${dp(t)}. Half a decibel more at the antenna takes ${R(e.half)} of signal over noise on ${e.name}, where the noise around the antenna is weakened along with the signal, and ${R(t.half)} on ${t.name}, where the noise of line and receiver rules.`:""}function up({heard:s,external_noise_db:e,system_noise_db:t,antenna_temperature_k:n,system_temperature_k:i}){if(e===null||t===null||i===null)return"";let r=i<y5?`Noise at the antenna ${k(n,3)} K, with line and receiver ${k(i,3)} K. `:"",a=`${E(e)} dB at the antenna, ${E(t)} dB with line and receiver`;return`${s}. ${r}Over k·T₀·b: ${a}.`}var v5=s=>s[0].toUpperCase()+s.slice(1);var k5=["preamplifier.gain_db","preamplifier.noise_figure_db"],kl="receiver.antenna_view",En="given",S5="horizon",j5=290,E5={gain_db:15,noise_figure_db:1},Sl=class extends b({request:m(c),result:m(c),names:m(c),refused:m(c)},j){static styles=[_,g`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: end;
      }
      label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      .own { padding-bottom: 18px; }
      .why { margin: 4px 0 10px; }
      .scroll { overflow-x: auto; }
      i { display: block; height: 8px; min-width: 1px; background: var(--soft); border-radius: 3px; }
      .two { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(280px, 100%), 1fr)); gap: 14px; }
      .bar { width: 40%; vertical-align: middle; }
      h3 { margin-bottom: 2px; font-size: 0.9rem; }
      .plain :is(th, td) { padding-top: 2px; padding-bottom: 2px; }
      .here { font-weight: 700; }
      @media print { .fields { display: none; } .two { gap: 4mm; } }
    `];render(){let{reception:e,bands:t,column:n}=this.result,i=t.map((r,a)=>({id:r.column.id,name:r.column.name,cost:e.whole_cost_by_band_db[a]}));return o`<div class="fields" @jw-change=${this._changed}>${this._form()}</div>
      <p class="why">${cp(this.result)}</p>
      <div class="two">
        <section>
          <h3>By part on ${n.name}</h3>
          ${this._bars(e.costs.map(({part:r,name:a,cost_db:l})=>({id:String(r),name:a,cost:l})),"Whole line",e.whole_cost_db)}
          <p class="quiet">${up(e)}</p>
        </section>
        <section><h3>Whole line by band</h3>${this._bars(i,"",0,n.id)}</section>
      </div>`}_bars(e,t,n,i){let r=Math.max(...e.map(({cost:l})=>l??0),n??0,.01),a=({id:l,name:d,cost:u})=>o`<tr data-id=${l} class=${l===i?"here":""}>
      <th scope="row">${d}</th>
      <td class="number">${u===null?"–":`${u.toFixed(2).replace("-","−")} dB`}</td>
      <td class="bar"><i style="width:${Math.max(u??0,0)/r*100}%"></i></td>
    </tr>`;return o`<table class="plain">
      <tbody>${e.map(a)}${t?a({id:"whole",name:t,cost:n}):h}</tbody>
    </table>`}_form(){let{receiver:e={}}=this.request,{preamplifier:t}=e,n=t?.before_element,i=u=>this.refused&&`${this.refused.group}.${this.refused.field}`===u?this.refused.message:"",r=(u,p)=>C(this.vocabulary,p,this.vocabulary.valueOf(u,p),i(p)),{antenna_temperature_k:a=null}=e,l=a===null?this.vocabulary.valueOf(e,kl):En,d=[...this.vocabulary.optionsOf(kl),[En,"a temperature"]];return o`${r(e,"receiver.noise_figure_db")}${r(e,"receiver.environment")}
      <div class="own">
        <label for="antenna-view">${this.vocabulary.labelOf(kl)}</label>
        <select id="antenna-view" @change=${this._looked}>
          ${d.map(([u,p])=>o`<option value=${u} .selected=${u===l}>${p}</option>`)}
        </select>
      </div>
      ${l===En?r(e,"receiver.antenna_temperature_k"):h}
      ${l===En||l===S5?h:r(e,"receiver.elevation_deg")}
      <div class="own">
        <label for="preamplifier">Preamplifier</label>
        <select id="preamplifier" @change=${this._placed}>
          <option value="" .selected=${!t}>none</option>
          ${this.names.map((u,p)=>o`<option value=${p} .selected=${n===p}>before ${p+1}, ${u}</option>`)}
        </select>
      </div>
      ${t?k5.map(u=>r(t,u)):h}`}_looked({target:e}){let{antenna_temperature_k:t}=this.result.reception;e.value===En?this._edit({antenna_temperature_k:t===null?j5:O5(t)}):this._edit({antenna_view:e.value,antenna_temperature_k:null})}_placed({target:e}){let t=this.request.receiver?.preamplifier??E5;this._edit({preamplifier:e.value===""?null:{...t,before_element:Number(e.value)}})}_changed(e){e.stopPropagation();let t=I(e),n=Object.keys(e.detail.changes).some(i=>i.startsWith("preamplifier"));this._edit(n?{preamplifier:{...this.request.receiver.preamplifier,...t}}:t)}_edit(e){x(this,"jw-line-edit",{kind:"receiver",changes:e})}},O5=s=>Math.max(1,Math.round(s));customElements.define("jw-line-receive",Sl);var jl=class extends b({result:m(c),request:m(c),current:{type:Boolean},names:m(c),refused:m(c),compared:m(c),after:m(c),spread:m(c),drawing:{type:Number},failure:{type:String},loadCharts:m(c)}){static styles=[_,T,g`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; min-width: 0; }
      @media print { .numbers { order: -1; } }
    `];render(){let{result:e}=this;return o`<section><h2 class="unseen">Charts</h2>
        <jw-line-charts .result=${e} .spread=${this.spread} .drawing=${this.drawing} .failure=${this.failure}
          .load=${this.loadCharts}></jw-line-charts>
      </section>
      <section class="panel">
        <h2>What would help <small>more at the antenna, in eight of ten cases between the two figures</small></h2>
        <jw-line-changes .result=${e} .current=${this.current} .compared=${this.compared}
          .after=${this.after}></jw-line-changes>
      </section>
      <section class="panel">
        <h2>On receive</h2>
        <jw-line-receive .request=${this.request} .result=${e} .names=${this.names}
          .refused=${this.refused}></jw-line-receive>
      </section>
      <section class="panel numbers"><h2>All numbers</h2><jw-line-numbers .result=${e}></jw-line-numbers></section>
      <jw-cautions .cautions=${e.cautions}></jw-cautions>`}};customElements.define("jw-line-results",jl);var T5=[1e3,1e4],_r=class{drawing=0;#e;#t;#s=0;constructor(e,t){this.#e=e,this.#t=new ie(e,t)}get result(){return this.#t.result}get error(){return this.#t.error}answered;async begin(e){this.cancel();let t=this.#s;for(let n of T5){if(this.drawing=n,await this.#t.ask({...e,draws:n}),t!==this.#s)return;if(this.#t.status!=="complete")break;this.answered=e}this.drawing=0,this.#e.requestUpdate()}cancel(){this.drawing!==0&&(this.#s++,this.drawing=0,this.#t.cancel(),this.#e.requestUpdate())}};function wr({receiver:s,explain:e,...t}){return t}var yr=class{line;spread;#e;#t;#s;#n=new Map;constructor(e,t){this.line=new ie(e,(n,i)=>t("line",n,i)),this.spread=new _r(e,(n,i)=>t("spread",n,i)),this.#e=new ie(e,(n,i)=>this.#i(n,t("line",n,i)))}follow(e,t=!1){let n=JSON.stringify(e),i=JSON.stringify(wr(e));i!==this.#s&&this.spread.cancel(),t||n!==this.#t?(this.#t=n,this.line.askNext(e)):this.current(e)&&i!==this.#s&&(this.#s=i,this.spread.begin(wr(e)))}giveUp(){this.line.status!=="complete"&&(this.#t=void 0),this.spread.drawing>0&&(this.#s=void 0),this.spread.cancel()}outdate(){this.#t=void 0,this.#n.clear()}drawAgain(e){this.spread.begin(wr(e))}current(e){return this.line.status==="complete"&&JSON.stringify(this.line.answered)===JSON.stringify(e)}get spreadShown(){let{answered:e,result:t}=this.spread;if(!(!e||!this.line.answered))return JSON.stringify(e)===JSON.stringify(wr(this.line.answered))?t:void 0}compare(e){let t=e.map(l=>JSON.stringify(l)),{answered:n,result:i}=this.line;n&&this.#n.set(JSON.stringify(A5(n)),{result:i});let{status:r}=this.#e;e.forEach(({elements:l},d)=>{l.length===0&&this.#n.set(t[d],{problem:"No element yet."})});let a=t.findIndex(l=>!this.#n.has(l));return a!==-1&&r!=="pending"&&this.#e.ask(e[a]),t.map(l=>this.#n.get(l)??{})}async#i(e,t){try{let n=await t;return this.#n.set(JSON.stringify(e),{result:n}),n}catch(n){throw this.#n.set(JSON.stringify(e),{problem:n.message}),n}}},A5=({explain:s,...e})=>e;function hp(s,e,t){return e.filter((n,i)=>i!==t&&n<s).length}var mp=s=>Number(s.toPrecision(3)),El={kind:"tuner",network:"t"},pp=(s=142e5)=>[{group:"Line",offers:[{id:"cable",words:"Coaxial cable",element:{kind:"cable",cable:"rg_213",length_m:10}},{id:"wires",words:"Open-wire line",more:"ladder or window line, twin lead",element:{kind:"wires",line:"window_450_stranded",length_m:10}},{id:"section",words:"Transformer section",more:"quarter wave, series section",element:{kind:"section",impedance_ohm:75,length_m:mp(.66*299792458/s/4),velocity_factor:.66}}]},{group:"Connectors",offers:[{id:"joint",words:"Joint",more:"plug in its jack",element:{kind:"joint",family:"n"}},{id:"adapter",words:"Adapter",more:"a joint at either end",element:{kind:"joint",family:"uhf",adapter_to:"n"}}]},{group:"Matching",offers:[{id:"tuner",words:"Tuner",element:El},{id:"balun",words:"Balun, 4:1",more:"200 Ω to 50 Ω",element:{kind:"transformer",ratio:4,loss_db:.2,name:"Balun"}},{id:"unun",words:"Unun, 9:1",more:"450 Ω to 50 Ω",element:{kind:"transformer",ratio:9,loss_db:.5,name:"Unun"}},{id:"choke",words:"Choke, 1:1",more:"current balun, common-mode choke",element:{kind:"transformer",ratio:1,loss_db:.1,choking_ohm:1e3,name:"Choke"}}]},{group:"In the line",offers:[{id:"arrester",words:"Arrester",more:"gas tube",element:{kind:"part",what:"arrester",loss_db:.1,vswr:1.1,voltage_limit_v:600}},{id:"switch",words:"Switch",more:"or relay",element:{kind:"part",what:"switch",loss_db:.1,vswr:1.1}},{id:"meter",words:"SWR meter",more:"or bridge",element:{kind:"part",what:"meter",loss_db:.1,vswr:1.05,directivity_db:25}},{id:"attenuator",words:"Attenuator",element:{kind:"part",what:"attenuator",loss_db:3,vswr:1.1,power_limit_w:50}},{id:"filter",words:"Filter",element:{kind:"part",what:"filter",loss_db:.3,vswr:1.2}},{id:"divider",words:"Power divider",element:{kind:"part",what:"divider",loss_db:3.2,vswr:1.2}},{id:"part",words:"Another part",more:"by its data sheet",element:{kind:"part",loss_db:.2}}]}],fp=(s=142e5)=>({vswr:{kind:"vswr",vswr:2},resonant:{kind:"resonant",resonance_hz:s,vswr:1.2,bandwidth_hz:mp(.03*s)},impedance:{kind:"impedance",resistance_ohm:50,reactance_ohm:0},dummy:{kind:"dummy",vswr:1.1,power_limit_w:300}});var q5={ArrowDown:1,ArrowUp:-1,ArrowRight:1,ArrowLeft:-1},Ol=class extends b({where:{type:String},frequency:m(c),_open:$(c)}){static styles=[_,_t,g`
      :host { position: relative; }
      .head { display: flex; flex-wrap: wrap; gap: 4px 10px; align-items: center; }
      #menu {
        position: absolute; z-index: 10; left: 0; right: 0; top: calc(100% + 4px); display: grid; gap: 10px 14px;
        grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); align-items: start;
        padding: 10px; background: var(--card); border: 1px solid var(--edge); border-radius: var(--round);
        box-shadow: 0 8px 28px #0004; scroll-margin: 70px 0;
      }
      h3 { font-size: 0.8rem; color: var(--soft); margin: 0 6px 2px; }
      [role='group'] { display: grid; }
      #menu button, #menu .pick {
        display: block; width: 100%; min-height: var(--target); padding: 4px 6px; border: 0; background: none;
        border-radius: 6px; text-align: left; font-size: 0.92rem; line-height: 1.2;
      }
      #menu .pick { align-content: center; justify-items: start; }
      #menu :is(button, .pick):hover { background: var(--accent-wash); }
      small { display: block; color: var(--soft); font-size: 0.78rem; }
      @media print { :host { display: none; } }
    `];constructor(){super(),this.where="",this._open=!1,this._elsewhere=e=>{e.composedPath().includes(this)||(this._open=!1)}}connectedCallback(){super.connectedCallback(),window.addEventListener("pointerdown",this._elsewhere)}disconnectedCallback(){super.disconnectedCallback(),window.removeEventListener("pointerdown",this._elsewhere)}render(){return o`<div class="head">
        <button id="add" aria-expanded=${this._open} aria-controls="menu" @click=${this._toggle}>Add…</button>
        <span class="quiet">${this.where}</span>
      </div>
      ${this._open?this._menu():h}`}_menu(){let e=pp(this.frequency);return o`<div id="menu" @keydown=${this._key} @focusout=${this._left}>
      ${e.map(({group:t,offers:n},i)=>o`<div role="group" aria-labelledby="group-${i}">
          <h3 id="group-${i}">${t}</h3>
          ${n.map(({id:r,words:a,more:l,element:d})=>o`<button data-add=${r} @click=${()=>this._add(d)}>${a}${l?o` <small>${l}</small>`:h}</button>`)}
          ${i===e.length-1?o`<label class="pick">Measured file <small>Touchstone, two ports</small>
                  <input id="measured" type="file" accept=".s2p,.ts,.txt" @change=${this._measured}></label>`:h}
        </div>`)}
    </div>`}get _choices(){return[...this.renderRoot.querySelectorAll("#menu :is(button, input)")]}async _toggle(){this._open=!this._open,await this.updateComplete,this._open&&(N(this.renderRoot,"#menu").scrollIntoView({block:"nearest"}),this._choices[0].focus({preventScroll:!0}))}_key(e){e.key==="Escape"&&(e.preventDefault(),e.stopPropagation(),this._close());let t=q5[e.key];if(t===void 0)return;e.preventDefault();let n=this._choices,i=n.indexOf(e.target)+t;n[(i+n.length)%n.length].focus()}_left({relatedTarget:e}){e&&!this.renderRoot.contains(e)&&(this._open=!1)}_close(){this._open=!1,N(this.renderRoot,"#add").focus()}_add(e){this._close(),x(this,"jw-line-add",{element:e})}async _measured(e){let[t]=e.target.files;if(!t)return;let n=t.name.replace(/\.\w+$/,"").slice(0,60);this._add({kind:"measured",touchstone:await t.text(),name:n})}};customElements.define("jw-line-add",Ol);var Tl=["power_limit_w","voltage_limit_v"],gp=["what","name","loss_db","vswr",...Tl],bp={cable:["cable","length_m","name"],wires:["line","length_m","name"],joint:["family","adapter_to","condition","added_resistance_ohm","exposure","name"],tuner:["network","coil_q","capacitor_q","largest_coil_h","largest_capacitor_f","current_limit_a","voltage_limit_v","name"],transformer:["ratio","loss_db","choking_ohm",...Tl,"name"],section:["impedance_ohm","length_m","velocity_factor","loss_db","voltage_limit_v","name"],part:gp,meter:[...gp,"directivity_db"],measured:["name","touchstone",...Tl]},Al=class extends b({element:m(c),at:{type:Number},count:{type:Number},name:{type:String},reading:m(c),open:{type:Boolean},refused:m(c)},j){static styles=[_,M(W),g`
      article { background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      :host([weakest]) article { border: 2px solid var(--ink); }
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
          <span class="loss">${this.reading?R(this.reading.loss):""}</span>
          ${this._chip()}
        </button>
      </div>
      <div id="fields">${this.open?this._form():h}</div>
    </article>`}get focused(){return this.shadowRoot?.activeElement?.id??""}focusOn(e){(this.shadowRoot?.getElementById(e)??N(this.renderRoot,"#toggle")).focus()}_sub(){let{reading:e}=this;if(this.refused)return o`<span class="error">needs a correction</span>`;if(!e)return"…";if(e.refusal)return"refused here";let{kind:t,ratio:n}=this.element,i=e.limited?`limited by ${e.limited}`:"no margin";return[t==="transformer"?`${k(n??1)}:1`:"",i,e.weakest?"weakest":"",e.undecided?"uncertain":"",e.brief,e.marks.length>0?"see note":""].filter(Boolean).join(" · ")}_chip(){let{reading:e}=this;return e?e.refusal?o`<span class="chip none">refused</span>`:e.margin===null?o`<span class="chip none">–</span>`:o`<span class="chip" data-step=${B(e.margin)}>${E(e.margin)}</span>`:o`<span class="chip none">…</span>`}_form(){let{reading:e,refused:t}=this,n=ai(this.element),i=bp[n]??bp.part,r=u=>t&&u===t.field?t.message:"",a=u=>{let p=`${n}.${u}`;return C(this.vocabulary,p,this.vocabulary.valueOf(this.element,p),r(u))},l=t&&!i.includes(t.field),d=e?[e.refusal,...e.says,...e.marks].filter(Boolean):[];return o`${d.map(u=>o`<p class="marks">${u}</p>`)}
      <div class="fields" @jw-change=${this._changed}>${i.map(a)}</div>
      ${l?o`<p class="error whole" role="alert">${t.message}</p>`:h}
      <div class="acts">
        <button id="up" ?disabled=${this.at===0} @click=${()=>this._edit("move",{to:this.at-1})}>Up</button>
        <button id="down" ?disabled=${this.at===this.count-1}
          @click=${()=>this._edit("move",{to:this.at+1})}>Down</button>
        <button id="duplicate" @click=${()=>this._edit("duplicate")}>Duplicate</button>
        <button id="remove" ?disabled=${this.count===1} @click=${()=>this._edit("remove")}>Remove</button>
        <button id="why" ?disabled=${!e}
          @click=${()=>x(this,"jw-line-open",{open:String(this.at)})}>Derivation</button>
      </div>`}_changed(e){e.stopPropagation(),e.detail.live||this._edit("set",{changes:I(e)})}_grab(e){x(this,"jw-line-grab",{at:this.at,pointer:e})}_edit(e,t={}){x(this,"jw-line-edit",{kind:e,at:this.at,...t})}};customElements.define("jw-line-card",Al);var ql=class extends b({elements:m(c),answered:m(c),result:m(c),names:m(c),refused:m(c),_open:$(c),_drag:$(c)}){static styles=[_,g`
      ol { list-style: none; margin: 0; padding: 0; display: grid; gap: 6px; }
      li { position: relative; }
      li[data-moved] { opacity: 0.5; }
      li[data-before]::before, li[data-after]::after {
        content: ''; position: absolute; left: 0; right: 0; height: 4px; border-radius: 2px; background: var(--accent);
      }
      li[data-before]::before { top: -5px; }
      li[data-after]::after { bottom: -5px; }
      .end { padding: 2px 0 4px 44px; font-size: 0.85rem; color: var(--soft); }
      @media print { ol { gap: 0; } }
    `];constructor(){super(),this._open=-1}willUpdate(e){let{refused:t}=this,n=t?.message===e.get("refused")?.message;e.has("refused")&&t&&!n&&(this._open=t.at)}render(){return o`<p class="end">Transmitter</p>
      <ol @jw-line-toggle=${this._toggled} @jw-line-grab=${this._grabbed} @jw-line-edit=${this._edited}
        @keydown=${this._key}>
        ${this.elements.map((e,t)=>this._row(e,t))}
      </ol>
      <p class="end">Antenna</p>
      <jw-line-add where=${this._open===-1?"before the antenna":`after element ${this._open+1}`}
        .frequency=${this.result?.frequency_hz} @jw-line-add=${this._add}></jw-line-add>`}_row(e,t){let n=Sm(this.answered,e,t),i=n===-1||!this.result?void 0:Em(this.result,n),r=this.refused?.at===t?this.refused:void 0,{at:a,to:l}=this._drag??{at:-1,to:-1};return o`<li ?data-moved=${a===t}
      ?data-before=${l===t&&t<a} ?data-after=${l===t&&t>a}>
      <jw-line-card .element=${e} .at=${t} .count=${this.elements.length} .name=${this.names[t]}
        .open=${t===this._open} .reading=${i} .refused=${r}></jw-line-card>
    </li>`}_toggled(e){this._open=this._open===e.detail.at?-1:e.detail.at}_cards(){return[...this.renderRoot.querySelectorAll("jw-line-card")]}async _edited({detail:e,target:t}){let n=t.focused,[i,r]=[e.at,{move:e.to,duplicate:e.at+1,remove:Math.max(e.at-1,0)}[e.kind]];r!==void 0&&(this._open===i&&(this._open=e.kind==="remove"?-1:r),await Promise.resolve(),await this.updateComplete,await this._cards()[r]?.updateComplete,this._cards()[r]?.focusOn(e.kind==="remove"?"toggle":n))}_key(e){let t={ArrowUp:-1,ArrowDown:1}[e.key],n=e.target.closest("jw-line-card");if(!e.altKey||t===void 0||!n)return;e.preventDefault();let i=n.at+t;i>=0&&i<this.elements.length&&x(n,"jw-line-edit",{kind:"move",at:n.at,to:i})}_grabbed({detail:e,target:t}){let{pointer:n,at:i}=e;if(n.button!==0)return;let r=n.currentTarget??n.composedPath()[0];r.setPointerCapture(n.pointerId);let a=this._cards().map(p=>p.getBoundingClientRect()).map(({top:p,height:f})=>p+scrollY+f/2),l=p=>this._drag={at:i,to:hp(p.clientY+scrollY,a,i)},d=p=>{for(let[y,w]of Object.entries(u))r.removeEventListener(y,w);let{to:f}=this._drag??{to:i};this._drag=void 0,p.type==="pointerup"&&f!==i&&x(t,"jw-line-edit",{kind:"move",at:i,to:f})},u={pointermove:l,pointerup:d,pointercancel:d};for(let[p,f]of Object.entries(u))r.addEventListener(p,f)}_add({detail:e}){let t=this._open===-1?this.elements.length:this._open+1;this._open=t,x(this,"jw-line-edit",{kind:"add",at:t,element:e.element})}};customElements.define("jw-line-list",ql);var yp=1e6,_p=3,wp="three numbers: frequency in MHz, resistance and reactance in Ω",M5=([s,e,t])=>({frequency_hz:Number((s*yp).toPrecision(12)),resistance_ohm:e,reactance_ohm:t});function xp(s){let e=s.split(/\r?\n/).map(r=>r.replace(/[#!].*/,"").trim()),t=e.findIndex(r=>r!==""&&Ya([r],_p).length===0);if(t!==-1)throw new RangeError(`Row ${t+1} is “${e[t]}”; allowed: ${wp}.`);let n=e.filter(r=>r!=="");if(n.length<2)throw new RangeError(`There ${n.length===1?"is 1 row":"are no rows"}; allowed: at least two, each with ${wp}.`);let i=Ya(n,_p);if(i.length===0)throw new RangeError("Some rows have a point and some a comma before the decimals; allowed: one of them in all rows.");return i.map(r=>({...r,value:r.value.map(M5).sort((a,l)=>a.frequency_hz-l.frequency_hz)}))}var $p=s=>s.map(({frequency_hz:e,resistance_ohm:t,reactance_ohm:n})=>[e/yp,t,n??0].map(Pi).join("  ")).join(`
`);var vp=[["vswr","its SWR"],["resonant","its resonance"],["impedance","one impedance"],["table","impedances in a table"],["measured","a measured file"],["dummy","being a dummy load"]],kp={vswr:["load_vswr.vswr","load_vswr.angle_deg"],resonant:["load_resonant.resonance_hz","load_resonant.vswr","load_resonant.bandwidth_hz","load_resonant.bandwidth_vswr"],impedance:["load_impedance.resistance_ohm","load_impedance.reactance_ohm"],measured:["load_measured.touchstone"],dummy:["load_dummy.vswr","load_dummy.power_limit_w"],table:[]},Sp={vswr:"An SWR alone says nothing of its phase. With the angle left empty, the answer covers every phase: what is likely, and the worst.",resonant:"A series circuit: resistive at resonance, and this far off it at the edges of the bandwidth."},Ml=class extends b({load:m(c),frequency:m(c),refused:m(c),_way:$(c),_problem:$(c),_readings:$(c)},j){static styles=[_,Wi,g`
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
      .onpaper { display: none; }
      @media print { .fields { display: none; } .onpaper { display: block; font-size: 8pt; } }
    `];willUpdate(e){e.has("load")&&(this._way=this.load.kind,this._problem="",this._readings=[])}render(){let e=n=>this._way===this.load.kind?this.vocabulary.valueOf(this.load,n):"",t=n=>this.refused?.field===n.split(".")[1]?this.refused?.message:"";return o`<p class="onpaper">${this._inWords()}</p>
    <div class="fields" @jw-change=${this._changed}>
      <div class="own">
        <label for="way">Known by</label>
        <select id="way" @change=${this._rechosen}>
          ${vp.map(([n,i])=>o`<option value=${n} .selected=${n===this._way}>${i}</option>`)}
        </select>
      </div>
      ${kp[this._way].map(n=>C(this.vocabulary,n,e(n),t(n)))}
      ${this._way==="table"?this._table():h}
      ${this._way in Sp?o`<p class="quiet wide">${Sp[this._way]}</p>`:h}
      ${this.refused?.field===""?o`<p class="error wide" role="alert">${this.refused.message}</p>`:h}
    </div>`}_inWords(){let{kind:e}=this.load,t=kp[e].filter(i=>!i.endsWith(".touchstone")),n=i=>`${this.vocabulary.labelOf(i)}: ${this.vocabulary.spoken(i,this.vocabulary.valueOf(this.load,i))}`;return[`Known by ${vp.find(([i])=>i===e)?.[1]}`,...t.map(n)].join(" · ")}_table(){let e=this._problem||(this.refused?.field==="points"?this.refused.message:"");return o`<div class="wide">
      <label for="rows">Rows of frequency in MHz, resistance and reactance in Ω</label>
      <textarea id="rows" spellcheck="false" placeholder="14.0  42  -8"
        aria-invalid=${e?"true":"false"} aria-describedby="rows-under"
        .value=${this.load.points?$p(this.load.points):""} @change=${this._pasted}></textarea>
      <p id="rows-under" class=${e?"error":"quiet"} role=${e?"alert":"note"}>
        ${e||"Paste them from a table or an analyser’s export."}
      </p>
      ${this._readings.length>0?Ii("The rows",this._readings,this._meant):h}
    </div>`}_rechosen(e){this._way=e.target.value;let t=fp(this.frequency)[this._way];t&&this._set(t)}_pasted({target:{value:e}}){this._readings=[];try{let t=xp(e);if(t.length===1)return this._meant(t[0]);this._readings=t;let n=t.map(({words:i})=>i).join(" or ");this._problem=`The rows can be read in more than one way: is one of them ${n}?`}catch(t){this._problem=t.message}}_meant=({value:e})=>{this._readings=[],this._problem="",this._set({kind:"table",points:e})};_changed(e){e.stopPropagation(),this._set({...this._way===this.load.kind?this.load:{kind:this._way},...I(e)})}_set(e){x(this,"jw-line-edit",{kind:"load",load:e})}};customElements.define("jw-line-load",Ml);var Cl=["mode","band","frequency_hz","exposure","ambient_temperature_c"],xr=["altitude_m","solar_irradiance_w_per_m2","added_sealing","vibration","matings_per_year","service_life_years","transmit_share","on_time_s","off_time_s","system_impedance_ohm","return_loss_asked_db","region"],C5=142e5,Rl=class extends b({request:m(c),refused:m(c),_more:$(c)},j){static styles=[_,g`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: end;
      }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; color: var(--accent); font-size: 0.9rem;
      }
      .onpaper { display: none; }
      @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
      @media print { .fields, details { display: none; } .onpaper { display: block; font-size: 8pt; } }
    `];willUpdate(e){e.has("refused")&&this.refused&&xr.includes(this.refused.field)&&(this._more=!0)}render(){let e=xr.filter(t=>this._value(t)!==this.vocabulary.valueOf({},`station.${t}`)).length;return o`<p class="onpaper">${this._inWords()}</p>
      ${this._fields(Cl)}
      <details ?open=${this._more} @toggle=${t=>this._more=t.target.open}>
        <summary>More about station and site${e>0?` (${e} set)`:""}</summary>
        ${this._more?this._fields(xr):h}
      </details>`}_inWords(){let t=[...Cl,...xr].filter(i=>Cl.includes(i)||this._value(i)!==this.vocabulary.valueOf({},`station.${i}`)).filter(i=>this._value(i)!==null),n=(i,r)=>`${this.vocabulary.labelOf(r)}: ${this.vocabulary.spoken(r,this._value(i))}`;return t.map(i=>n(i,`station.${i}`)).join(" · ")}_value(e){return this.vocabulary.valueOf(this.request,`station.${e}`)}_fields(e){return o`<div class="fields" @jw-change=${this._changed}>${e.map(t=>this._field(t))}</div>`}_field(e){return e==="frequency_hz"&&this.request.band?h:C(this.vocabulary,`station.${e}`,this._value(e),this.refused?.field===e?this.refused.message:"")}_changed(e){if(e.stopPropagation(),e.detail.live)return;let t=I(e);"band"in t&&(t.frequency_hz=t.band===null?this.request.frequency_hz??C5:null),x(this,"jw-line-edit",{kind:"station",changes:t})}};customElements.define("jw-line-station",Rl);var jp=["station.power_w","station.power_is"],R5=["transmitter.behaviour","transmitter.holds_to_vswr"],zl=class extends b({request:m(c),refused:m(c)},j){static styles=[_,g`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 4px 12px; align-items: end;
      }
      [name='transmitter.behaviour'] { grid-column: span 2; }
      .tune { display: flex; flex-wrap: wrap; gap: 4px 12px; align-items: center; margin-top: 4px; }
      .tune button { font-size: 0.9rem; }
      .tune p { flex: 1 1 200px; }
      .onpaper { display: none; }
      @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
      @media print { .fields, .tune, .quiet { display: none; } .onpaper { display: block; font-size: 8pt; } }
    `];render(){let e=this._value("station.power_is")==="net",t=e?jp:[...jp,...R5],n=this.request.elements.some(({kind:i})=>i==="tuner");return o`<p class="onpaper">${this._inWords(t)}</p>
      <div class="fields" @jw-change=${this._changed}>${t.map(i=>this._field(i))}</div>
      ${e?o`<p class="quiet">Net power is what the line accepts, whatever its SWR.</p>`:this._usual()}
      ${n?h:o`<div class="tune">
              <button id="tune" @click=${this._tune}>Put a tuner beside it</button>
              <p class="quiet">It finds its own setting on every band.</p>
            </div>`}`}_usual(){let{transmitters:e}=this.vocabulary.lists,t=e.find(({id:n})=>n===this._value("transmitter.behaviour"));return this._value("transmitter.holds_to_vswr")!==null||!t?.holds_to_vswr?h:o`<p class="quiet">As usual: full power up to SWR ${t.holds_to_vswr}.</p>`}_inWords(e){return e.filter(t=>this._value(t)!==null).map(t=>`${this.vocabulary.labelOf(t)}: ${this.vocabulary.spoken(t,this._value(t))}`).join(" · ")}_value(e){let t=e.startsWith("transmitter.")?this.request.transmitter:this.request;return this.vocabulary.valueOf(t,e)}_field(e){let{group:t,field:n,message:i}=this.refused??{};return C(this.vocabulary,e,this._value(e),`${t}.${n}`===e?i:"")}_changed(e){if(e.stopPropagation(),e.detail.live)return;let[t]=Object.keys(e.detail.changes)[0].split(".");x(this,"jw-line-edit",{kind:t,changes:I(e)})}_tune(){x(this,"jw-line-edit",{kind:"add",at:0,element:El})}};customElements.define("jw-line-transmitter",zl);var Nl=class extends b({request:m(c),own:m(c),antenna:{type:String},names:m(c),answered:m(c),result:m(c),refused:m(c)},j){static styles=[_,T,g`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; align-content: start; min-width: 0; }
      .list { padding: 12px 8px; }
      .list h2 { padding-left: 6px; }
      .keep { font-size: 0.85rem; }
      @media print { .keep { display: none; } }
    `];render(){let{request:e}=this,t=this.own.filter(i=>i!=="load"&&i!=="transmitter"),n=i=>this.refused?.group===i?this.refused:void 0;return o`<section class="panel">
        <h2>Station and site</h2>
        ${this._ownOf(t,t.map(i=>this.vocabulary.labelOf(`station.${i}`)).join(", "))}
        <jw-line-station .request=${e} .refused=${n("station")}></jw-line-station>
      </section>
      <section class="panel">
        <h2>The transmitter</h2>
        ${this._ownOf(["transmitter"],"its behaviour at a bad SWR")}
        <jw-line-transmitter .request=${e}
          .refused=${n("station")??n("transmitter")}></jw-line-transmitter>
      </section>
      <section class="panel list">
        <h2>The line <small>loss, and margin in dB</small></h2>
        <jw-line-list .elements=${e.elements} .names=${this.names} .answered=${this.answered}
          .result=${this.result} .refused=${n("elements")}></jw-line-list>
      </section>
      <section class="panel">
        <h2>The antenna <small>${this.own.includes("load")?h:this.antenna}</small></h2>
        ${this._ownOf(["load"],"antenna")}
        <jw-line-load .load=${e.load} .frequency=${this.result?.frequency_hz}
          .refused=${n("load")}></jw-line-load>
        ${this.own.includes("load")?o`<button class="keep" id="keep-antenna"
                @click=${()=>x(this,"jw-line-edit",{kind:"keep-antenna"})}>Make it the station’s</button>`:h}
      </section>`}_ownOf(e,t){let n=e.filter(i=>this.own.includes(i));return o`<jw-own of="This line" what=${n.length>0?t:""}
      @jw-leave=${()=>x(this,"jw-line-edit",{kind:"leave",names:n})}></jw-own>`}};customElements.define("jw-line-editor",Nl);var Wl=(s,e,t)=>s.map((n,i)=>i===e?t:n),z5=(s,e)=>{let t={...ve(s),request:e};return{...s,lines:Wl(s.lines,s.current,t)}};function Pl(s,e,t){let{preamplifier:n}=s.receiver??{};if(!n)return{...s,elements:e};let i=t.indexOf(n.before_element),{preamplifier:r,...a}=s.receiver;return i!==-1&&(a.preamplifier={...n,before_element:i}),{...s,elements:e,receiver:a}}var Ep=(s,e)=>Pl(s,e.map(t=>s.elements[t]),e),Ll=s=>s.elements.map((e,t)=>t),Op={set:(s,{at:e,changes:t})=>({...s,elements:Wl(s.elements,e,Qe({...s.elements[e],...t}))}),add:(s,{at:e,element:t})=>s.elements.length>=fi?s:Pl(s,s.elements.toSpliced(e,0,t),Ll(s).toSpliced(e,0,void 0)),duplicate:(s,{at:e})=>Op.add(s,{at:e+1,element:s.elements[e]}),remove:(s,{at:e})=>s.elements.length===1?s:Ep(s,Ll(s).toSpliced(e,1)),move:(s,{at:e,to:t})=>t<0||t>=s.elements.length||t===e?s:Ep(s,Ll(s).toSpliced(e,1).toSpliced(t,0,e)),change:(s,{edits:e})=>{let t=s.elements.map((n,i)=>({element:n,from:i}));for(let{at:n,element:i,insert:r}of e.toSorted((a,l)=>l.at-a.at))t.splice(n,r?0:1,...i===null?[]:[{element:i,from:r?void 0:n}]);return Pl(s,t.map(n=>n.element),t.map(n=>n.from))},load:(s,{load:e})=>({...s,load:Qe(e)}),leave:(s,{names:e})=>Object.fromEntries(Object.entries(s).filter(([t])=>!e.includes(t))),transmitter:(s,{changes:e})=>({...s,transmitter:Qe({...s.transmitter,...e})}),receiver:(s,{changes:e})=>({...s,receiver:Qe({...s.receiver,...e})})},N5=({request:s})=>JSON.stringify(s)===JSON.stringify(pi.request),$r={choose:(s,{line:e})=>({...s,current:e}),rename:(s,{name:e})=>({...s,lines:Wl(s.lines,s.current,{...ve(s),name:e})}),insert:(s,{lines:e})=>{let t=[...s.lines,...e.slice(0,Math.max(us-s.lines.length,0))];return{lines:t,current:Math.min(s.lines.length,t.length-1)}},empty:s=>{let e={name:"New line",request:{elements:[]}};return s.lines.length===1&&N5(ve(s))?{lines:[e],current:0}:$r.insert(s,{lines:[e]})},keep:s=>$r.insert(s,{lines:[L5(s)]}),drop:(s,{line:e})=>{if(s.lines.length===1)return s;let t=s.current>e||s.current===s.lines.length-1?s.current-1:s.current;return{lines:s.lines.toSpliced(e,1),current:Math.max(t,0)}}};function L5(s){let{name:e,request:t}=ve(s),n=e.replace(/ \d+$/,""),i=new Set(s.lines.map(a=>a.name)),r=2;for(;i.has(`${n} ${r}`);)r++;return{name:`${n} ${r}`,request:t}}function As(s,e){if(e.kind in $r)return $r[e.kind](s,e);let{request:t}=ve(s),n=Op[e.kind](t,e);return n===t?s:z5(s,n)}var Il=class extends b({lines:m(c),current:{type:Number},canUndo:{type:Boolean},canRedo:{type:Boolean}}){static styles=[_,_t,g`
      div { display: flex; flex-wrap: wrap; gap: 6px; align-items: end; }
      .names { flex: 1 1 280px; flex-wrap: nowrap; }
      .names > label { flex: 1 1 120px; max-width: 280px; }
      label > span { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      button { font-size: 0.85rem; padding: 0 10px; }
      .file:hover { border-color: var(--accent); }
      .file:focus-within { outline: 3px solid var(--accent); outline-offset: 2px; }
      @media print { :host { display: none; } }
    `];render(){let e=(t,n)=>o`<button id=${t} @click=${()=>x(this,"jw-line-do",{what:t})}>${n}</button>`;return o`<div>
      <div class="names">
        ${this.lines.length>1?this._lines():h}
        <label><span>Name of this line</span><input id="name" maxlength="60" autocomplete="off"
          .value=${this.lines[this.current].name} @change=${this._renamed}></label>
      </div>
      <div role="group" aria-label="Undo and keep">
        <jw-undo ?undo=${this.canUndo} ?redo=${this.canRedo}
          @jw-turn=${({detail:t})=>x(this,"jw-line-do",{what:t.way})}></jw-undo>
        <button id="keep" ?disabled=${this.lines.length>=us}
          @click=${()=>this._edit({kind:"keep"})}>Compare with a copy</button>
        <button id="empty" ?disabled=${this.lines.length>=us}
          @click=${()=>this._edit({kind:"empty"})}>Start empty</button>
      </div>
      <div role="group" aria-label="Take along">
        ${e("link","Copy link")}${e("export","Export lines")}
        <label class="pick">Import<input id="import" type="file" accept=".json,application/json"
          @change=${this._picked}></label>
        ${e("print","Print")}
      </div>
    </div>`}_lines(){return o`<label><span>Line</span><select id="lines" @change=${t=>this._edit({kind:"choose",line:Number(t.target.value)})}>
      ${this.lines.map(({name:t},n)=>o`<option value=${n} .selected=${n===this.current}>${t}</option>`)}
    </select></label>`}_renamed({target:e}){let t=e.value.trim();t?this._edit({kind:"rename",name:t}):e.value=this.lines[this.current].name}_picked({target:e}){let[t]=e.files;t&&x(this,"jw-line-import",{file:t}),e.value=""}_edit(e){x(this,"jw-line-edit",e)}};customElements.define("jw-line-bar",Il);var Bl=class extends b({lines:m(c),current:{type:Number},known:m(c)}){static styles=[_,T,M(W),g`
      .scroll { position: relative; overflow-x: auto; }
      .plain :is(td, th) { vertical-align: middle; }
      .plain thead th { white-space: normal; vertical-align: bottom; }
      tr[aria-current] th { border-left: 4px solid var(--accent); padding-left: 6px; }
      .chip { padding: 3px 8px; border-radius: 5px; font-weight: 700; }
      button { font-size: 0.82rem; padding: 0 9px; }
      td { white-space: nowrap; }
      td small { display: block; color: var(--soft); }
      @media print { button { display: none; } }
    `];render(){return o`<section class="panel"><h2>Lines kept</h2>
      <div class="scroll" tabindex="0" role="group" aria-label="Kept lines"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Line</th><th scope="col" class="number">Smallest margin</th><th scope="col">Band</th>
          <th scope="col" class="number">At the antenna</th><th scope="col" class="number">Loss</th>
          <th scope="col" class="number">SWR</th><th scope="col">Weakest part</th>
          <th><span class="unseen">Choose</span></th>
        </tr>
      </thead>
      <tbody>
        ${this.lines.map((e,t)=>this._row(e,t))}
      </tbody>
    </table></div></section>`}_row({name:e},t){let n=t===this.current;return o`<tr data-line=${t} aria-current=${n?"true":h}>
      <th scope="row">${e}</th>
      ${this._numbers(this.known[t]??{})}
      <td>
        <button ?disabled=${n} aria-label=${n?h:`Show ${e}`}
          @click=${()=>x(this,"jw-line-edit",{kind:"choose",line:t})}>${n?"shown":"Show"}</button>
        <button aria-label="Drop ${e}" ?disabled=${this.lines.length===1}
          @click=${()=>x(this,"jw-line-edit",{kind:"drop",line:t})}>Drop</button>
      </td>
    </tr>`}_numbers({result:e,problem:t}){if(!e)return o`<td colspan="6" class="quiet">${t??"Calculating…"}</td>`;let n=e.margin_db,i=Xt(e),r=a=>{let l=i.find(d=>d.id===a);return o`<td class="number">
        ${l?o`${l.likely} <small>${xt.toLowerCase()} ${l.worst}</small>`:"–"}
      </td>`};return o`<td class="number">
        ${n===null?"none":o`<span class="chip" data-step=${B(n)}>${E(n)} dB</span>`}
      </td>
      <td>${e.column.name}</td>
      ${r("delivered")}${r("loss")}${r("swr")}
      <td>${e.weakest===null?"–":e.parts[e.weakest].name}</td>`}};customElements.define("jw-line-compare",Bl);var Hl="methods";function Fl(s,e){let t=s===null||s===""?NaN:Number(s);return Number.isInteger(t)&&t>=0&&t<e?t:void 0}function Tp(s,e){if(s===Hl)return"Method";let t=Fl(s,e.length);return t===void 0?"":`Element ${t+1}: ${e[t]}`}function P5(s){let e=s?.field??"",t=/^elements\[(\d+)\](?:\.(\w+))?/.exec(e);if(t)return{group:"elements",at:Number(t[1]),field:t[2]??""};let[n,...i]=e.split(".");return n==="load"?{group:n,field:(i[0]??"").replace(/\[.*/,"")}:n==="transmitter"?{group:n,field:i[0]??""}:n==="receiver"?{group:i.length>1?i[0]:n,field:i.at(-1)??""}:{group:e===""?"":"station",field:e}}var Ap=s=>s&&{...P5(s),message:s.message};function qp(s,e){let t=JSON.stringify(e.request),n=s.lines.findIndex(({request:i})=>JSON.stringify(i)===t);return n===-1?{kind:"insert",lines:[e]}:{kind:"choose",line:n}}var W5=`This line is too long for a link (over ${ui} characters); export it as a file instead.`,On=class extends b({loadCharts:m(c),_open:$(c),_said:$(c),_change:$(c)},mt){static view="line";static ownNames=["line","name","open"];static styles=[_,T,kh];_document=c;constructor(){super(),this._open=null,this._said="",this._told="",this._answers=new yr(this,(e,t,n)=>this._call(e,t,n)),this._catalogue=this._enquiry("catalogue")}_begin(){this._document=new ze(Pe,Z,this.vocabulary.fields,Xe),this._document.attach(this,()=>{this._notice({text:"What another tab did with your lines came in."}),this._settle()})}disconnectedCallback(){this._answers.giveUp(),super.disconnectedCallback()}get _own(){return this._document.present}_askAnew(){super._askAnew(),this._answers.outdate()}set _own(e){this._document.put(e)}_turned({from:e,to:t}){return this._document.turned(e,t)}updated(e){if(this.toggleAttribute("beside",this._open!==null),this.transport===void 0)return;this._isEmpty||this._answers.follow(this._request),(e.has("_open")||e.has("transport"))&&this._open!==null&&["initial","error"].includes(this._catalogue.status)&&this._catalogue.ask({})}render(){let{lines:e,current:t}=this._own,{line:n,spread:i,spreadShown:r}=this._answers,{name:a,request:l}=this._current,d=this._whole(l),u=gm(d,this.vocabulary.lists),p=Ap(n.error),f=Tp(this._open,u),y=this._answers.current(this._request),w=this._change&&n.result?.changes.find(({title:K})=>K===this._change?.title),[v,...S]=this._toldOf(e,w),q=p?`Out of date, these are the numbers from before the last change. ${p.message}`:"";return o`<div @jw-line-edit=${this._edited} @jw-line-do=${this._do} @jw-line-import=${this._imported}
        @jw-line-open=${({detail:K})=>this._show(K.open)} @jw-close=${()=>this._show(null)}
        @jw-line-compare=${({detail:K})=>this._change=K.change} @jw-line-take=${this._taken}
        @jw-line-spread=${({detail:K})=>K.begin?this._answers.drawAgain(n.answered):i.cancel()}>
      ${this._progress(n)}
      <main>
        <h2 class="onpaper wide">${a}</h2>
        <jw-line-bar class="wide" .lines=${e} .current=${t}
          .canUndo=${this.canUndo} .canRedo=${this.canRedo}></jw-line-bar>
        ${p?.group===""?this._trouble(p.message):h}
        ${e.length>1?this._compared(e,t,S):h}
        <jw-line-editor antenna=${wi(this.station)?.name??""} .request=${d}
          .own=${d0(l,this.station,this.vocabulary)} .names=${u}
          .answered=${n.answered} .result=${n.result} .refused=${p}></jw-line-editor>
        ${this._isEmpty?o`<p class="waiting empty quiet" role="status">
                Nothing stands between transmitter and antenna yet: add the first element of the line.
              </p>`:n.result?o`<jw-line-answer .result=${n.result} .answered=${n.answered} .open=${this._open??""}
                .outdated=${q}></jw-line-answer>
              <jw-line-results .result=${n.result} .request=${d} .current=${y} .names=${u}
              .refused=${p} .compared=${w} .after=${v} .spread=${r} .drawing=${i.drawing}
              .failure=${i.error?.message??""} .loadCharts=${this.loadCharts}></jw-line-results>`:o`<p class="waiting ${p?"error":"quiet"}" role="status">
                ${p?.message??"Calculating…"}
              </p>`}
      </main>
      <p class="unseen" role="status">${this._said}</p>
      <jw-sheet .heading=${f}>${f?this._detail(y):h}</jw-sheet>
    </div>`}_detail(e){let{answered:t,result:n}=this._answers.line;return o`<jw-line-detail .element=${this._explained} .answered=${t} .result=${n}
      .current=${e} .catalogue=${this._catalogue.result} .error=${this._catalogue.error}></jw-line-detail>`}_trouble(e){return o`<p class="trouble wide" role="alert">${e} <button @click=${()=>this._answers.follow(this._request,!0)}>Try again</button></p>`}_toldOf(e,t){let n=e.length>1?e.map(({request:r})=>this._whole(r)):[];if(!this.transport)return[{}];if(!t)return[{},...this._answers.compare(n)];let i=As(this._own,{kind:"change",edits:t.edits});return this._answers.compare([this._whole(ve(i).request),...n])}_compared(e,t,n){return o`<jw-line-compare class="wide" .lines=${e} .current=${t} .known=${n}></jw-line-compare>`}get _isEmpty(){return this._current.request.elements.length===0}get _current(){return ve(this._own)}get _explained(){return Fl(this._open,this._current.request.elements.length)}get _request(){let e=this._whole(this._current.request);return this._explained===void 0?e:{...e,explain:this._explained}}_whole(e){return tt(e,this.station,this.vocabulary)}_edit(e){let{own:t,changes:n}=this._parted(e);this._put(t,n,{isStep:e.kind!=="choose",isEntry:!1})}_parted(e){let t=this._own,{request:n}=ve(t);if(e.kind==="transmitter"){let a={...yi(this.station),...n.transmitter,...e.changes};return{own:As(t,{...e,changes:a})}}if(e.kind==="load"&&!n.load&&this._isStationsVswr(e.load))return{own:t,changes:{settings:this._settings({vswr:e.load.vswr})}};if(e.kind==="keep-antenna")return this._withAntenna();if(e.kind!=="station")return{own:As(t,e)};let i=Object.keys(e.changes);return{own:i.some(a=>a in n)?As(t,{kind:"leave",names:i}):t,changes:{settings:this._settings(e.changes)}}}_withAntenna(){let{name:e,request:t}=this._current,n=Hi(this.station,"antennas",{name:`Antenna of ${e}`.slice(0,60),load:t.load}),i=this.station.antennas.length;return{own:As(this._own,{kind:"leave",names:["load"]}),changes:{...n,...Fi({...this.station,...n},"antennas",i)}}}_isStationsVswr(e){let{vswr:t,...n}=this._whole(this._current.request).load,{vswr:i,...r}=e,{max:a}=this.vocabulary.fieldOf("settings.vswr");return t!==void 0&&i<=a&&JSON.stringify(n)===JSON.stringify(r)}_edited({detail:e}){this._change=void 0,this._edit(e),e.kind==="move"&&(this._said=`Moved to place ${e.to+1}.`),e.kind==="keep"&&(this._said="A copy is kept and shown."),this._settle()}_settle(){this._open!==Hl&&this._explained===void 0&&(this._open=null),this._address(!0),this._tellTrouble(),this.requestUpdate()}_taken({detail:{change:e}}){this._edited({detail:{kind:"change",edits:e.edits}}),this._said=`${e.title}: done; Undo takes it back.`}_show(e){e!==this._open&&(this._open=e,this._address(!1))}get _fragment(){return gn(this._current,this._open).fragment}_restore(e,t){let{line:n,open:i,problem:r}=ir(e,this.vocabulary.fields);return this._open=i,n&&!t&&this._edit(qp(this._own,n)),this._settle(),{text:r}}_tellTrouble(){let{problem:e,spoilt:t}=this._document;if(e===this._told)return;this._told=e;let n=t&&{words:"Save them",run:()=>H("jointwise-lines-unread.txt","text/plain",t)};this._notice(e&&{text:e,action:n})}turn(e){let t=super.turn(e);return t&&(this._said=e==="undo"?"Undone.":"Done again."),this._settle(),t}async _do({detail:{what:e}}){e==="undo"||e==="redo"?this.turn(e):e==="link"?await this._link():this._notice(await xm[e](this._own))}async _link(){gn(this._current,null).whole?await this._copyLink():this._notice({text:W5})}async _imported({detail:{file:e}}){let{edit:t,notice:n}=await $m(e,this.vocabulary.fields);t&&this._edited({detail:t}),this._notice(n)}};customElements.define("jw-line-view",On);var I5={"":"as the site",indoor:"indoors",sheltered:"outdoors, sheltered",exposed:"outdoors, exposed",immersed:"under water"},Jt={label:"Your name for it"},Ul={label:"Length",unit:"m"},vr={power_limit_w:{label:"Stands, average",empty:"not checked"},voltage_limit_v:{label:"Stands, peak",empty:"not checked"}},B5={factor:1e-12,unit:"pF"},H5={factor:1e-6,unit:"µH"},F5={name:Jt,what:{label:"What it is",options:{arrester:"arrester",switch:"switch or relay",meter:"SWR meter",attenuator:"attenuator",filter:"filter",divider:"power divider",other:"another part"}},loss_db:{label:"Loss"},vswr:{label:"SWR of the part"},...vr},ne=(s,e)=>Object.fromEntries(Object.entries(e).map(([t,n])=>[`${s}.${t}`,n])),Mp=({bands:s,cables:e,families:t,transmitters:n,noise_environments:i,antenna_views:r,wire_lines:a})=>({...ne("cable",{cable:{label:"Cable",entries:e},length_m:Ul,name:Jt}),...ne("wires",{line:{label:"Open-wire line",entries:a},length_m:Ul,name:Jt}),...ne("joint",{family:{label:"Connector",entries:t},adapter_to:{label:"Adapter to",options:oe("no adapter",t)},exposure:{label:"Weather here",options:I5},name:Jt}),...ne("tuner",{network:{label:"Network",options:{l:"L (two parts)",t:"T (high pass)",pi:"pi (low pass)"}},coil_q:{label:"Q of the coil"},capacitor_q:{label:"Q of the capacitors"},largest_capacitor_f:{label:"Largest capacitor",...B5,empty:"as usual"},largest_coil_h:{label:"Largest coil",...H5},voltage_limit_v:{label:"Capacitors stand, peak",empty:"not checked"},current_limit_a:{label:"Coil stands, rms",empty:"not checked"},name:Jt}),...ne("transformer",{ratio:{label:"Ratio, antenna : radio",unit:": 1"},loss_db:{label:"Loss"},choking_ohm:{label:"Choking impedance"},...vr,name:Jt}),...ne("section",{impedance_ohm:{label:"Impedance"},length_m:Ul,velocity_factor:{label:"Velocity factor"},loss_db:{label:"Loss"},voltage_limit_v:vr.voltage_limit_v,name:Jt}),...Object.assign({},...["part",...Js].map(l=>ne(l,F5))),"arrester.voltage_limit_v":{label:"Fires at, peak",empty:"not checked"},"meter.directivity_db":{label:"Directivity",empty:"not known"},...ne("measured",{touchstone:{label:"Touchstone file, two ports"},...vr,name:{label:"What it is"}}),...ne("load_vswr",{vswr:{label:"SWR of the antenna"},angle_deg:{label:"Angle of its reflection",empty:"unknown"}}),...ne("load_resonant",{resonance_hz:{label:"Resonance",factor:1e6,unit:"MHz"},vswr:{label:"SWR at resonance"},bandwidth_hz:{label:"Bandwidth",factor:1e3,unit:"kHz"},bandwidth_vswr:{label:"SWR at its edges"}}),...ne("load_impedance",{resistance_ohm:{label:"Resistance"},reactance_ohm:{label:"Reactance"}}),...ne("load_measured",{touchstone:{label:"Touchstone file, one port"}}),...ne("load_dummy",{vswr:{label:"SWR of the dummy load"},power_limit_w:{label:"Stands, average",empty:"not checked"}}),...ne("transmitter",{behaviour:{label:"At a bad SWR",entries:n},holds_to_vswr:{label:"Full power up to SWR",empty:"as usual"}}),...ne("station",{power_w:{label:"Transmitter power"},band:{label:"Band",options:oe("spot frequency",s)},frequency_hz:{label:"Spot frequency",factor:1e6,unit:"MHz"}}),...ne("receiver",{noise_figure_db:{label:"Receiver noise figure"},environment:{label:"Noise around the antenna",entries:i},antenna_view:{label:"What the antenna looks at",entries:r},elevation_deg:{label:"Elevation of its beam"},antenna_temperature_k:{label:"Noise temperature of the antenna"}}),...ne("preamplifier",{before_element:{label:"Preamplifier"},gain_db:{label:"Its gain"},noise_figure_db:{label:"Its noise figure"}})});var Cp={id:On.view,label:"Line",fields:Zi,words:Mp,element:({transport:s,stage:e,loadCharts:t})=>o`<jw-line-view class="view" .transport=${s} .stage=${e} .loadCharts=${t}></jw-line-view>`};var Zt="asked",Rp={family:"uhf",band:"20m",frequency_hz:null};function Dl({family:s,band:e,frequency_hz:t}){return s!==null&&(e!==null||t!==null)?{family:s,band:e,frequency_hz:t}:void 0}function U5(s,e,t){if(s.includes(e)||s.length<t)return _e(s,e);let n=cn(s,e);return _e(s.filter(i=>i!==n),e)}function zp(s,e,t,n,i){let r=s.band?{frequency_hz:null}:s.frequency_hz?{band:null}:{},a={...e,...s,...r,view:Zt},{family:l,band:d,frequency_hz:u,power_w:p=t.power_w}=a;return d!==null&&!t.bands.includes(d)&&(a.bands=n.bands.map(({id:f})=>f).filter(f=>f===d||t.bands.includes(f))),u!==null&&(a.frequencies_hz=_e(t.frequencies_hz,u)),t.families!==null&&!t.families.includes(l)&&(a.families=[...t.families,l]),{...a,powers_w:U5(t.powers_w,p,i)}}var D5=s=>({type:"choice",choices:s,nullable:!0,default:null}),Np=({requests:{cell:s,matrix:e},first_bands:t},{powers_w:n})=>({matrix:{...s,...e,bands:{...e.bands,default:t},powers_w:{...e.powers_w,default:n},shows:{type:"choice",choices:["margin","largest"],default:"margin",nullable:!1},view:D5(["methods","website",Zt])}});var Be=class extends Error{constructor({detail:e,field:t,value:n,allowed:i}){super(e),this.name="Refusal",this.field=t,this.value=n,this.allowed=i}};var qs=class extends Be{constructor(e){super({detail:e}),this.name="Unreachable"}},Tn=s=>s?.name==="Unreachable";var G5=new Set(["families","bands","frequencies_hz","powers_w"]),Lp=Object.keys(z.requests.matrix),Pp=Lp.filter(s=>!G5.has(s)),Wp=["family","band","frequency_hz","power_w"],Gl=(s,e)=>Object.fromEntries(e.filter(t=>s[t]!==null).map(t=>[t,s[t]]));function qe(s,e){return{...Gl(s,Lp),bands:It(s,e)}}function An(s){if(!(s.family===null||s.band===null&&s.frequency_hz===null))return Gl(s,[...Pp,...Wp])}var Kl=(s,e)=>Gl({...s,...e},[...Pp,...Wp]);function qn(s){if(s.view!==Zt)return s.view!==null?s.view:An(s)?"derivation":s.family!==null?"family":s.band===null&&s.frequency_hz===null?void 0:"band"}var Qt={view:null,family:null,band:null,frequency_hz:null};function Ip(s,e,t){let{first:n,isPacked:i,lists:r}=t,a=JSON.stringify(qe(s,t))===JSON.stringify(qe(n.matrix,t));if(e||a&&!i)return z.matrix;let l=new Set(It(s,t));return{families:r.families.filter(({id:d})=>s.families===null||s.families.includes(d)),columns:r.bands.filter(({id:d})=>l.has(d)),powers_w:s.powers_w}}var Vl=s=>s.low_hz!==void 0&&s.low_hz===s.high_hz;function Mn(s,e){if(s.band!==null)return e.columns.find(({id:t})=>t===s.band);if(s.frequency_hz!==null)return e.columns.find(t=>Vl(t)&&t.low_hz===s.frequency_hz)}function Yl(s,e){let t=An(e);return t!==void 0&&["family","band","frequency_hz"].every(n=>s[n]===t[n])}function Bp(s,e,t,{bands:n,families:i}){let r=(l,d)=>l.find(u=>u.id===d)?.name??d,a=Mn(e,t)?.name??r(n,e.band)??`${e.frequency_hz} Hz`;switch(s){case"methods":return"Method";case"website":return"Put this on your website";case"family":return r(i,e.family);case"band":return`All limits on ${a}`;case"derivation":return`${r(i,e.family)} on ${a}`}return""}var Sr="club-matrix.json",Cn="embed.js";var K5=s=>`"${String(s).replaceAll("&","&amp;").replaceAll('"',"&quot;").replaceAll("<","&lt;")}"`;function kr(s,e){let n=Object.entries(e).filter(([,i])=>i!==""&&i!==!1).map(([i,r])=>r===!0?` ${i}`:` ${i}=${K5(r)}`);return`<${s}${n.join("")}></${s}>`}var V5='<script>addEventListener("message",e=>{for(const f of document.querySelectorAll("iframe"))if(f.contentWindow===e.source&&e.data&&e.data.type==="jointwise-height")f.height=e.data.height})<\/script>';function Hp(s,{server:e,fragment:t,page:n,theme:i,lang:r,compact:a,rows:l,columns:d}){let u={theme:i==="auto"?"":i,lang:r,compact:a},p=t?`${e}#${t}`:e,f=S=>kr("script",{src:S});switch(s){case"files":return f(Cn)+kr("jointwise-matrix",{src:Sr,size:`${l}x${d}`,link:n,...u});case"server":return f(new URL(Cn,e).href)+kr("jointwise-matrix",{link:p,...u})}let y=new URL("embed.html",e),w=Object.entries(u).filter(([,S])=>S).map(([S,q])=>[S,q===!0?"":String(q)]);y.search=String(new URLSearchParams(w)),y.hash=t;let v=460+l*(a?28:46);return kr("iframe",{src:y.href,title:"Power margins of coaxial joints",width:"100%",height:v,loading:"lazy"})+V5}var jr=[["files","Two files","Save both files, put them into the folder of your web page, and paste the line into the page."],["server","This server","Paste the line; this server answers your visitors, so they must be able to reach it."],["frame","A frame","For sites that take no script: paste the line; where even its last part is refused, the height stays as given."]],Y5=[["auto","as the visitor has it"],["light","light"],["dark","dark"]],X5=[["","as the web page"],["en","English"],["de","Deutsch"]],J5=({protocol:s,hostname:e})=>s.startsWith("http")&&!/^(localhost|127\.|\[::1\])/.test(e),Xl=class extends b({state:m(c),power:{type:Number},transport:m(c),loadEmbed:m(c),_way:$(c),_look:$(c),_script:$(c),_failed:$(c)},j){static styles=[_,g`
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
    `];constructor(){super(),this._way="files",this._look={theme:"auto",lang:"",compact:!1,page:J5(location)?this._server:""},this._snapshot=new ie(this,(e,t)=>this.transport.ask("snapshot",e,t))}firstUpdated(){this.loadEmbed().then(e=>this._script=e,e=>this._failed=e.message)}updated(e){let t={...qe(this.state,this.vocabulary),power_w:this.power},n=JSON.stringify(t);(n!==this._asked||e.get("transport"))&&this._snapshot.askNext(t),this._asked=n}render(){let e=location.protocol.startsWith("http")?jr:jr.slice(0,1),[,,t]=jr.find(([n])=>n===this._way)??jr[0];return o`<p>The matrix as it is set now, with every derivation, on a page of your own. Each cell opens there as
    it does here.</p>
      <div class="ways" role="group" aria-label="How it is brought in">
        ${e.map(([n,i])=>o`<button data-way=${n} aria-pressed=${n===this._way}
              @click=${()=>this._way=n}>${i}</button>`)}
      </div>
      <p class="quiet">${t}</p>
      <div class="choices">
        ${this._select("theme","Light or dark",Y5)} ${this._select("lang","Language",X5)}
        <label><input id="site-compact" type="checkbox" .checked=${this._look.compact}
          @change=${({target:n})=>this._set("compact",n.checked)}>Compact: numbers only</label>
        ${this._way==="files"?o`<label class="wide">Where the full page lies for your visitors; empty for nowhere
              <input id="site-page" placeholder="jointwise.html" .value=${this._look.page}
                @input=${({target:n})=>this._set("page",n.value.trim())}></label>`:h}
      </div>
      ${this._made()}`}_select(e,t,n){return o`<label>${t}
      <select id="site-${e}" @change=${({target:i})=>this._set(e,i.value)}>
        ${n.map(([i,r])=>o`<option value=${i} ?selected=${i===this._look[e]}>${r}</option>`)}
      </select></label>`}_set(e,t){this._look={...this._look,[e]:t}}get _server(){return location.origin+location.pathname}_made(){let{result:e,error:t}=this._snapshot,n=this._failed??(t&&oi(t,this.vocabulary,"snapshot",{}));if(n)return o`<p class="error" role="alert">${n}</p>`;if(!e||!this._script)return o`<p class="preview" role="status">Calculating…</p>`;let i=JSON.stringify(e),{families:r,columns:a}=e.matrix,l=Re({...this.state,...Qt,power_w:this.power},this.vocabulary.first.matrix),d=Hp(this._way,{...this._look,server:this._server,fragment:l,rows:r.length,columns:a.length}),{theme:u,lang:p,compact:f,page:y}=this._look;return o`<textarea id="snippet" readonly aria-label="The line to paste" .value=${d}></textarea>
      <div class="acts">
        <button id="copy" @click=${async()=>x(this,"jw-notice",await Z5(d))}>Copy the line</button>
        ${this._way==="files"?o`<button id="save-script" @click=${()=>H(Cn,"text/javascript",this._script)}>Save
            ${Cn}</button>
              <button id="save-snapshot" @click=${()=>H(Sr,"application/json",i)}>Save
              ${Sr}</button>`:h}
      </div>
      <h3>As your visitors see it</h3>
      <div class="preview"><jointwise-matrix .snapshot=${i} theme=${u} lang=${p||h}
        ?compact=${f} link=${y||h}></jointwise-matrix></div>`}};async function Z5(s){let{link:e}=await Ys(s);return e?{text:"Copy the line by hand out of its field."}:{text:"Line copied; paste it where the matrix shall stand."}}customElements.define("jw-website",Xl);var Jl=class extends b({matrix:m(c),column:{type:Number},power:{type:Number}}){static styles=[_,M(W),g`
      .scroll { overflow-x: auto; margin-top: 12px; }
      .plain { min-width: 500px; }
      td.number { padding-left: 6px; }
      .plain thead th { white-space: normal; vertical-align: bottom; }
      .margin { font-weight: 650; padding: 5px 6px !important; }
      [data-step='refused'] { background: var(--refused); color: var(--refused-ink); }
    `];render(){let{low_hz:e,high_hz:t}=this.matrix.columns[this.column];return o`<p>${e===t?O(e):`${O(e)} to ${O(t)}`}. Cautious to generous
    figures; the power limits are PEP.</p>
      <div class="scroll" tabindex="0" role="region" aria-label="Limits by family">
        <table class="plain">
          <thead>
            <tr>
              <th>Family</th><th class="number">Margin, dB</th>
              ${this.matrix.limits.map(n=>o`<th class="number">${_s[n]}, W</th>`)}
              <th class="number">Return loss, dB</th><th class="number">Largest, W</th><th>Marks</th>
            </tr>
          </thead>
          <tbody>
            ${this.matrix.families.map((n,i)=>this._row(i))}
          </tbody>
        </table>
      </div>`}_row(e){let{matrix:t,column:n}=this,i=yt(t,e,n,t.powers_w.indexOf(this.power));return o`<tr data-family=${i.family.id}>
      <th scope="row">${i.family.name}</th>
      <td class="number margin" data-step=${et(i)}>${Dt(i)}</td>
      ${t.limits.map(r=>this._range(t[`${r}_allowed_w`][e][n],a=>k(a,3)))}
      ${this._range(t.return_loss_db[e][n],r=>k(r,3))}
      <td class="number">${i.largest===null?"none":an(i.largest)}</td>
      <td>${i.marks.map(un).join(" ")}${i.undecided?" ?":h}</td>
    </tr>`}_range([e,t],n){return e===null?o`<td class="number">–</td>`:o`<td class="number">${e===t?n(e):o`${n(e)}<br>to ${n(t)}`}</td>`}};customElements.define("jw-band-limits",Jl);var Zl=class extends b({sheet:m(c),sources:m(c),packs:m(c)}){static styles=[_,J,g`
      section { margin-top: 18px; }
      h3 { margin-bottom: 6px; }
      .hazard {
        padding: 8px 12px; margin-top: 6px; border-left: 4px solid var(--alarm); background: var(--alarm-wash);
      }
      td:nth-child(2) { font-weight: 600; }
    `];render(){let{sheet:e}=this;return o`<p>${e.summary}${se(e.pack)}</p>
      ${e.also_called.length>0?o`<p class="quiet">Also called ${e.also_called.join(", ")}.</p>`:h}
      ${e.hazards.length>0?o`<section><h3>Near relatives: what not to
          mate</h3>${e.hazards.map(t=>this._hazard(t))}</section>`:h}
      <section>
        <h3>Values</h3>
        <table class="plain">
          <thead><tr><th>Quantity</th><th>Value</th><th>From</th></tr></thead>
          <tbody>${e.values.map(t=>this._value(t))}</tbody>
        </table>
      </section>`}_hazard(e){return o`<div class="hazard">${e.text} <span class="kind">${e.kind}</span></div>`}_value(e){let{unit:t,low:n,high:i}=e,r=n===i?X(n,t):`${X(n,t)} to ${X(i,t)}`;return o`<tr data-field=${e.field}>
      <th scope="row">${e.name}</th>
      <td>${r}</td>
      <td>
        ${e.kinds.map(a=>o`<span class="kind">${a}</span> `)}${se(this._pack(e))}
        <div class="quiet">${e.sources.map(a=>this._title(a)).join("; ")}${e.note?o`. ${e.note}`:h}</div>
      </td>
    </tr>`}_pack({sources:e}){return e.map(t=>Vi(t,this.packs)).find(Boolean)}_title(e){return we(this.sources.find(t=>t.id===e))||e}};customElements.define("jw-data-sheet",Zl);var Q5=["frequency","power"],Ql=class extends b({cell:m(c),load:m(c),_chosen:$(c)}){static styles=[_,g`
      .limits { display: flex; flex-wrap: wrap; gap: 6px; margin-bottom: 8px; }
      h4 { margin-top: 10px; break-after: avoid; }
      @media print { .limits { display: none; } }
    `];constructor(){super(),this._charts=[]}willUpdate(e){e.has("cell")&&e.get("cell")?.family.id!==this.cell.family.id&&(this._chosen=void 0),(e.has("cell")||e.has("_chosen"))&&(this._charts=Q5.map(n=>this._chart(n)));let{cell:t}=this;e.has("cell")&&(this._match=n=>Gm({cell:t,colours:n}))}render(){return o`<div class="limits" role="group" aria-label="Limit in the charts">
        ${this.cell.limits.map(({id:e,name:t})=>o`<button aria-pressed=${e===this._limit.id} @click=${()=>this._chosen=e}>${t}</button>`)}
      </div>
      ${this._charts.map(({along:e,figure:t,label:n})=>o`<h4>Against ${e}</h4>
          <jw-chart data-along=${e} .figure=${t} .label=${n} .load=${this.load}></jw-chart>`)}
      <h4>Return loss against frequency</h4>
      <jw-chart data-shows="match" .figure=${this._match} .label=${Km(this.cell)}
        .load=${this.load}></jw-chart>
      <p class="quiet">Solid: most cautious figures; dotted: most generous; between them the range. The diamond is this
      cell; across the return loss runs the one asked for.</p>`}get _limit(){return this.cell.limits.find(({id:e})=>e===this._chosen)??this.cell.limits[0]}_chart(e){let t={cell:this.cell,limit:this._limit,along:e};return{along:e,figure:n=>Dm({...t,colours:n}),label:Ym(t)}}};customElements.define("jw-charts",Ql);var Er=g`
  details { border: 1px solid var(--line); border-radius: var(--round); }
  summary {
    display: flex; flex-wrap: wrap; gap: 4px 10px; align-items: center; min-height: 52px; padding: 6px 12px;
    cursor: pointer;
  }
  summary::marker { content: ''; }
  summary::after {
    content: 'steps'; margin-left: auto; color: var(--accent); font-size: 0.85rem; text-decoration: underline;
  }
  details[open] summary::after { content: 'fold'; }
  .number { padding: 3px 8px; border-radius: 5px; font-weight: 700; }
  p { flex: 1 0 100%; font-size: 0.9rem; }
  jw-steps { padding: 0 12px 10px; }
  @media print {
    summary { min-height: 0; break-inside: avoid; break-after: avoid; }
    summary::after { display: none; }
  }
`;var ed=class extends b({limit:m(c),catalogue:m(c),binding:{type:Boolean,reflect:!0},_open:$(c)}){static styles=[_,M(W),Er,g`
      :host([binding]) details { border: 2px solid var(--accent); }
      .binds {
        padding: 1px 8px; border-radius: 99px; background: var(--accent); color: var(--accent-ink); font-size: 0.75rem;
      }
    `];willUpdate(e){if(!e.has("limit"))return;let{binding:t}=this.limit;e.get("limit")?.binding!==t&&(this._open=t),this.binding=t}render(){let{limit:e}=this;return o`<details ?open=${this._open} @toggle=${t=>this._open=t.target.open}>
      <summary>
        <strong>${e.name}</strong>
        ${e.binding?o`<span class="binds">limits</span>`:h}
        ${e.margin_db===null?o`<span class="quiet">no margin in receive</span>`:o`<span class="number" data-step=${B(e.margin_db)}>${E(e.margin_db)} dB</span>
              <span class="quiet">to ${E(e.margin_high_db)} dB${this._allowed()}</span>`}
        <p>${e.sentence}</p>
      </summary>
      ${this._open?o`<jw-steps .steps=${e.steps} .catalogue=${this.catalogue}></jw-steps>`:h}
    </details>`}_allowed(){let{allowed_w:e,allowed_high_w:t}=this.limit;return e===null?"":`; allows ${A(e)} to ${A(t)}`}};customElements.define("jw-limit",ed);var Fp=[["contact_db","contacts"],["conductor_db","conductors, skin effect"],["dielectric_db","dielectric"],["mismatch_db","mismatch"]],e4={standard:["Limit of the standard","The most that the standard lets a new mated pair of this family lose."],datasheet:["Published maximum","The most that a data sheet states for a part; no standard promises it for the family."],handbook:["Published figure","Measured, or passed on at second hand; no standard promises it."],"common practice":["Customary figure","What the trade reckons with; no standard promises it."],memory:["Maximum, from memory","Its text was not seen; nothing promises it."]},td=class extends b({losses:m(c),sources:m(c)}){static styles=[_,g`
      .two { display: grid; grid-template-columns: 1.6fr 1fr; gap: 14px; }
      section { padding: 10px 12px; border: 1px solid var(--line); border-radius: var(--round); }
      .total { font-size: 1.2rem; font-weight: 700; }
      i { display: block; height: 6px; min-width: 1px; background: var(--accent); border-radius: 3px; }
      td:last-child { width: 35%; vertical-align: middle; }
      @media print { .two { break-inside: avoid; } }
      @media (max-width: 480px) { .two { grid-template-columns: 1fr; } }
    `];render(){let{losses:e}=this,t=Math.max(...Fp.map(([a])=>e[a])),[n,i]=e4[e.published_kind],r=this.sources?.find(({id:a})=>a===e.published_source);return o`<div class="two">
      <section>
        <h4>Expected, computed</h4>
        <p class="total">${k(e.expected_db,3)} dB</p>
        <table class="plain">
          <tbody>
            ${Fp.map(([a,l])=>o`<tr>
                <th scope="row">${l}</th>
                <td class="number">${k(e[a],3)} dB</td>
                <td><i style="width:${t>0?e[a]/t*100:0}%"></i></td>
              </tr>`)}
          </tbody>
        </table>
      </section>
      <section>
        <h4>Guaranteed</h4>
        <p class="total">
          ${e.guaranteed_db===null?"none stated":`${k(e.guaranteed_db,3)} dB`}
        </p>
        <h4>${n}</h4>
        <p class="published">${k(e.published_db,3)} dB at ${O(e.published_at_hz)}</p>
        <p class="quiet">${i} Reflection is already included; nothing is added to it.</p>
        <p class="quiet">${we(r)} <span class="kind">${e.published_kind}</span></p>
      </section>
    </div>`}};customElements.define("jw-losses",td);var t4={holds:"as asked for",depends:"in doubt: it depends on which source one believes",misses:"less than asked for"},s4={holds:"holds",misses:"refused"},sd=class extends b({match:m(c),catalogue:m(c)}){static styles=[_,M(W),Er,g`.number[data-step='refused'] { background: var(--refused); color: var(--refused-ink); }`];render(){let{match:e}=this;return o`<details ?open=${e.state==="misses"}>
      <summary>
        <strong>Return loss</strong>
        <span class="number" data-step=${s4[e.state]??h}>${k(e.return_loss_db,3)} dB</span>
        <span class="quiet">to ${k(e.return_loss_high_db,3)} dB; asked for:
          ${k(e.asked_db,3)} dB</span>
        <strong class="state">${t4[e.state]}</strong>
        <p>${e.sentence}</p>
      </summary>
      <jw-steps .steps=${e.steps} .catalogue=${this.catalogue}></jw-steps>
    </details>`}};customElements.define("jw-match",sd);var n4={contact:"Joint",cable:"Cable"},id=class extends b({ratings:m(c),sources:m(c)}){static styles=[_,g`
      .plain div { font-weight: 400; margin-top: 2px; }
      .plain thead th { white-space: normal; vertical-align: bottom; }
      [data-role='decides'] .does { color: var(--alarm); font-weight: 600; }
      @media print { tr { break-inside: avoid; } }
    `];render(){return this.ratings.length===0?o`<p class="quiet">None is known.</p>`:o`<p class="quiet">Each is held against what is computed for its own frequency, air, temperature and
      cable, then carried over to this cell. One that is published and lower decides; one from memory or habit never
      does.</p>
      <table class="plain">
        <thead>
          <tr>
            <th scope="col">Rating</th><th scope="col" class="number">Computed there</th>
            <th scope="col" class="number">Here</th>
          </tr>
        </thead>
        <tbody>${this.ratings.map(e=>this._rating(e))}</tbody>
      </table>`}_rating(e){let t=this.sources?.find(({id:n})=>n===e.source);return o`<tr data-role=${e.role}>
      <th scope="row">
        ${n4[e.part]}, ${A(e.power_w)} at ${O(e.frequency_hz)}
        <div>Air ${bs(e.ambient_temperature_c)},
          hottest ${bs(e.hottest_temperature_c)},
          ${e.cable}</div>
        <div class="quiet">${we(t)} <span class="kind">${e.kind}</span>${e.note?o` ${e.note}`:h}</div>
        <div class="does">${e.sentence}</div>
      </th>
      <td class="number">${nd(e.computed_w)}<br>to ${nd(e.computed_high_w)}</td>
      <td class="number">${nd(e.here_w)}</td>
    </tr>`}},nd=s=>A(Number(s.toPrecision(3)));customElements.define("jw-ratings",id);var rd=class extends b({cell:m(c),catalogue:m(c),loadCharts:m(c)}){static styles=[_,J,M(W),g`
      .verdict { display: flex; gap: 14px; align-items: center; padding-bottom: 12px; }
      .verdict b {
        padding: 10px 12px; border-radius: var(--round); font-size: 1.5rem; line-height: 1; white-space: nowrap;
      }
      .verdict b[data-step='refused'] { font-size: 1rem; background: var(--refused); color: var(--refused-ink); }
      .facts {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: 8px 14px; padding-bottom: 6px;
      }
      .facts > :last-child { grid-column: 1 / -1; }
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
        ${this._number()}
        <p id="verdict">${e.verdict}${se(e.family.pack||e.column.pack)}</p>
      </div>
      <dl class="facts">${this._facts()}</dl>
      ${e.refused_by==="match"?[this._match(),this._limits()]:[this._limits(),this._match()]}
      <section><h3>Charts</h3><jw-charts .cell=${e} .load=${this.loadCharts}></jw-charts></section>
      <section><h3>Checks</h3>${this._gates()}</section>
      <section>
        <h3>Loss of the mated pair</h3>
        <jw-losses .losses=${e.losses} .sources=${t?.sources}></jw-losses>
      </section>
      <section>
        <h3>Power ratings as evidence</h3>
        <jw-ratings .ratings=${e.ratings} .sources=${t?.sources}></jw-ratings>
      </section>
      <section>
        <h3>Breakdown of the air gap and wave modes</h3>
        <p class="quiet">For information; these do not enter the margin.</p>
        <details class="more">
          <summary>Show ${e.air_breakdown.length} steps</summary>
          <jw-steps .steps=${e.air_breakdown} .catalogue=${t}></jw-steps>
        </details>
      </section>
      <section><jw-cautions .cautions=${e.cautions}></jw-cautions></section>`}_limits(){let{limits:e}=this.cell;return o`<section aria-label="Limits">
      <h3>Limits</h3>
      ${e.map(t=>o`<jw-limit data-limit=${t.id} .limit=${t} .catalogue=${this.catalogue}></jw-limit>`)}
    </section>`}_match(){return o`<section aria-label="Match">
      <h3>Match</h3>
      <jw-match .match=${this.cell.match} .catalogue=${this.catalogue}></jw-match>
    </section>`}_number(){let{margin_db:e,match:t,refused_by:n}=this.cell;return n==="match"?o`<b data-step="refused">${Ut(t.return_loss_db)} dB</b>`:n?o`<b data-step="refused">refused</b>`:e===null?o`<b data-step="holds">${Ut(t.return_loss_db)} dB</b>`:o`<b data-step=${B(e)}>${E(e)} dB</b>`}_facts(){let{cell:e}=this;return[["Power",A(e.power_w)],["Computed at",O(e.frequency_hz)],["Range",e.margin_db===null?void 0:`${E(e.margin_db)} to ${E(e.margin_high_db)} dB`],["Largest power that holds",e.largest_power_w===null?"none":A(Je(e.largest_power_w,3))],["Centre contact",Up(e.contact_temperature_c,e.allowed_temperature_c)],["Cable",Up(e.cable_temperature_c,e.cable_allowed_temperature_c)],["Peak voltage",P(e.peak_voltage_v,"V",3)],["Cable counted",`${e.cable_name}, ${e.cable_given?"as given":"the family’s customary one"}`]].map(([n,i])=>i===void 0?h:o`<div><dt>${n}</dt><dd>${i}</dd></div>`)}_gates(){return o`<table class="plain">
      <thead>
        <tr><th><span class="unseen">Passed</span></th><th>Check</th><th>Finding</th></tr>
      </thead>
      <tbody>
        ${this.cell.gates.map(e=>o`<tr class=${e.passed?"gate":"gate failed"} data-gate=${e.id}>
            <td>${e.passed?"✓":e.hard?"✕":"!"}<span
              class="unseen">${e.passed?"passed":e.hard?"refuses":"marked"}</span></td>
            <td>${e.name}</td>
            <td>${e.sentence} ${e.kind?o`<span class="kind">${e.kind}</span>`:h}</td>
          </tr>`)}
      </tbody>
    </table>`}},Up=(s,e)=>`${bs(s)} of ${bs(e)}`;customElements.define("jw-derivation",rd);var Dp="close this sheet and open another.",ad=class extends b({kind:{type:String},state:m(c),matrix:m(c),cell:m(c),catalogue:m(c),error:m(c),power:{type:Number},loadCharts:m(c),loadEmbed:m(c),transport:m(c)},j){static styles=[_,g`.room { height: 70vh; }`];render(){return this._view()??o`<p class="room" role="status">${this.error?.message??this._waiting()}</p>`}_waiting(){let{family:e,band:t,frequency_hz:n}=this.state,{bands:i}=this.vocabulary.lists;if(this.kind==="family"&&this.catalogue)return`There is no connector “${e}” here; ${Dp}`;if(this.kind!=="band"||this.matrix.margin_db===void 0)return"Calculating…";let r=i.find(({id:a})=>a===t)?.name??(t===null&&O(n));return r?`${r} is not among the columns of this matrix; “Bands and powers” puts it there.`:`There is no band “${t}” here; ${Dp}`}_view(){let{catalogue:e,cell:t,matrix:n,state:i}=this;switch(this.kind){case"derivation":return t&&o`<jw-derivation .cell=${t} .catalogue=${e} .loadCharts=${this.loadCharts}></jw-derivation>`;case"methods":return e&&o`<jw-methods .catalogue=${e}></jw-methods>`;case"website":return o`<jw-website .state=${i} .power=${this.power} .transport=${this.transport}
          .loadEmbed=${this.loadEmbed}></jw-website>`;case"family":{let r=e?.families.find(({id:a})=>a===i.family);return e&&r&&o`<jw-data-sheet .sheet=${r} .sources=${e.sources} .packs=${e.packs}></jw-data-sheet>`}case"band":{let r=n.columns.indexOf(Mn(i,n));return r===-1||n.margin_db===void 0?void 0:o`<jw-band-limits .matrix=${n} .column=${r} .power=${this.power}></jw-band-limits>`}}}};customElements.define("jw-detail",ad);var i4=[["link","Copy link"],["csv","CSV"],["json","JSON"],["print","Print"],["website","Put on a website"]],od=class extends b({file:{type:String}}){static styles=[_,g`
      div { display: flex; flex-wrap: wrap; gap: 6px; }
      button, a { font-size: 0.82rem; padding: 0 9px; }
      a {
        display: grid; align-items: center; min-height: var(--target); color: inherit; text-decoration: none;
        border: 1px solid var(--edge); border-radius: var(--round); background: var(--card);
      }
      a:hover { border-color: var(--ink); }
    `];constructor(){super(),this.file=""}render(){return o`<div role="group" aria-label="Take along">
      ${i4.map(([e,t])=>o`<button id="export-${e}" @click=${()=>this._export(e)}>${t}</button>`)}
      ${this.file?o`<a id="export-offline" href=${this.file} download="jointwise.html">Save for offline use</a>`:h}
    </div>`}_export(e){this.dispatchEvent(new CustomEvent("jw-export",{detail:{kind:e},bubbles:!0,composed:!0}))}};customElements.define("jw-exports",od);var dd=new CSSStyleSheet,Gp=[["var(--chosen) 100%","calc((100% + 1px) / var(--levels) - 1px) 3px"],["0 100%","100% 7px"],["0 100%","100% 7px"],["0 calc(100% - 7px)","100% 1px"],["50% calc(100% - 10px)","1px 5px"],["50% calc(100% - 12px)","calc(100% - 8px) 1px"],["0 0","auto"]],ld=s=>`linear-gradient(${s} 0 0)`,Kp=s=>ld(`color-mix(in srgb,currentColor ${s},transparent)`),Yp=`.ladder{background-repeat:no-repeat;
  background-position:${Gp.map(([s])=>s).join()};
  background-size:${Gp.map(([,s])=>s).join()}}`,Vp=new Set,r4=(s,e)=>`calc((100% + 1px)*${s}/${e})`;function a4(s){return`linear-gradient(90deg,${s.map((t,n)=>{let i=t==="refused"?"transparent":`var(--step-${t})`,r=r4(n+1,s.length);return`${i} 0 calc(${r} - 1px),var(--card) 0 ${r}`}).join()})`}function o4(s,e){let t=i=>i?"var(--hatch)":"none",n=Xp(e)?[Kp("75%"),Kp("30%")]:["none","none"];return[ld("var(--accent)"),a4(s),t(s.includes("refused")),ld("var(--card)"),...n,t(e==="refused")]}var Xp=s=>typeof s=="number";function Jp(s,e){let t=`ladder-${s.join("-")}-in-${Xp(e)?"margin":e}`;return Vp.has(t)||(Vp.add(t),dd.insertRule(`.${t}{background-image:${o4(s,e).join()}}`)),`ladder ${t}`}var Or=20,cd=80,Zp=s=>Math.round((Math.min(Math.max(s,-Or),Or)+Or)/(2*Or)*cd);function Qp(s,e){let[t,n]=[Zp(s),Zp(e)];return`from-${t} over-${n-t}`}var l4=Oe.map((s,e)=>`[data-high="${e}"]::after{color:var(--step-${e}-ink);background:linear-gradient(to bottom left,var(--step-${e}) 50%,transparent calc(50% + 0.5px))}`).join(""),ef=`${l4}
.number,td>button::before,td>button::after{grid-column:1/-1}
i{grid-area:3/2;height:3px;min-width:3px;margin-top:1px;background:currentColor}
${Array.from({length:cd+1},(s,e)=>{let t=`${e/cd*100}%`;return`.from-${e}{margin-left:${t}}.over-${e}{width:${t}}`}).join(`
`)}`;var d4=g`
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
`,Rn=g`print, screen and (min-width: 1500px)`,c4=g`
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
`,tf=[M(W),M(ef),M(Yp),d4,dd,g`@media ${Rn} { ${c4} }`,g`
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
  `];var ud=class extends b({gates:m(c),packed:{type:Boolean}}){static styles=[_,M(W),g`
      :host { font-size: 0.85rem; }
      .scale { display: flex; max-width: 46rem; margin-bottom: 10px; }
      .scale span { flex: 1; padding: 6px 2px; text-align: center; font-size: 0.75rem; line-height: 1.2; }
      .scale span:nth-of-type(5) { border-left: 3px solid var(--ink); }
      dl { display: grid; grid-template-columns: repeat(auto-fill, minmax(260px, 1fr)); gap: 6px 20px; }
      dl div { display: grid; grid-template-columns: 54px 1fr; gap: 8px; align-items: center; }
      dt { display: grid; place-items: center; min-height: 22px; font-weight: 600; }
      dt[data-step] { border-radius: 4px; }
      dt[data-step='holds'], dt[data-step='refused'] { font-size: 0.72rem; }
      dt[data-step='refused'] {
        color: var(--refused-ink);
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
      @media ${Rn} {
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
        ${Oe.map((t,n)=>o`<span data-step=${n}>${Ki(n)}</span>`)}
      </div>
      <dl>
        ${this._row(o`<i class="levels"></i>`,"one line for each power level, named at the left of the row; the chosen one is outlined. The most cautious published figures count","unfolded")}
        ${this._row("?","undecided: the sources differ on which side of the limit it lies","unfolded")}
        ${this._row(e,"the ladder: one rung for each power level, lowest first, each in the colour of its own margin; the chosen one is underlined","folded")}
        ${this._row(o`<span class="range"><i></i></span>`,"range from the most cautious to the most generous published figures; the upright line is 0 dB. The cautious end is printed","folded")}
        ${this._row(o`<span class="undecided" data-step="3"><i data-step="5">?</i></span>`,"undecided: the sources differ on which side of the limit it lies","folded")}
        ${this._row(fo,"a power figure from memory is lower than the margin shown")}
        ${this._row("RL 26","in receive: return loss 26 dB, enough; there is no power to bear","","holds")}
        ${this.gates.map(t=>this._row(t.hard?Xi(t):un(t),u4[t.id]??t.name,"",t.hard?"refused":""))}
        ${this.packed?this._row("◆","from a pack of yours or of the server"):h}
      </dl>`}_row(e,t,n="",i=""){return o`<div class=${n}><dt data-step=${i}>${e}</dt><dd>${t}</dd></div>`}},u4={te11:"refused: a second wave mode travels in the joint",cable_te11:"refused: a second wave mode travels in its cable",no_figures:"refused: beyond every published figure",receive_only:"refused: made for receiving only",no_heat_room:"refused: the air is as hot as the contact may get",immersion:"refused: not made for under water",customary_frequency:"above its customary frequency",weather:"not sealed for this weather",vibration:"coupling does not suit this vibration",wear:"wears out: more swaps than it is made for",cable_fit:"not made for this cable diameter",cold:"too cold",match:"refused: return loss 8 dB, less than asked for",match_doubt:"match in doubt: only the generous figures give the return loss asked for",house:"refused: above a limit the station set itself, from a pack"};customElements.define("jw-legend",ud);var sf={ArrowUp:[-1,0],ArrowDown:[1,0],ArrowLeft:[0,-1],ArrowRight:[0,1]},nf=(s,e,t)=>Math.min(Math.max(s,e),t);function rf({key:s,ctrlKey:e},[t,n],i,r){let a=t===-1?0:-1;if(s==="Home")return e?[0,0]:[t,a];if(s==="End")return e?[i-1,r-1]:[t,r-1];if(!(s in sf))return;let[l,d]=sf[s],u=[nf(t+l,-1,i-1),nf(n+d,-1,r-1)];return u[0]===-1&&u[1]===-1?[t,n]:u}function h4(s,e){let t=ws({...s,lowerFromMemory:e&&s.lowerFromMemory});return o`<span class="rung" data-power=${s.power} data-step=${et(s)} ?data-chosen=${e}
    ?data-undecided=${s.undecided}>${t?o`<small>${t}</small>`:h}${Dt(s)}</span>`}var af=(s,e)=>o`<span class="rungs" aria-hidden="true">${s.map((t,n)=>h4(t,n===e))}</span>`;function of(){let s={power:0,margin:0,marks:[]};lt(af([s,{...s,lowerFromMemory:!0}],1),document.createDocumentFragment())}var m4=s=>s.margin===null?h:o`<i class=${Qp(s.margin,s.high)}></i>`,p4=(s,e)=>({ladder:Jp(e.map(et),et(s)),letters:ws(s)||h,high:s.undecided?B(s.high):h}),f4={ladder:h,letters:h,high:h};function lf({matrix:s,f:e,c:t,p:n,shows:i,focusable:r,open:a,unfolded:l}){let d=s.powers_w.map((v,S)=>yt(s,e,t,S)),u=d[n],p=Ih(u,i),{ladder:f,letters:y,high:w}=l?f4:p4(u,d);return o`<td data-family=${u.family.id} data-band=${u.column.id} data-power=${u.power} ?data-open=${a}>
    <button class=${f} data-letters=${y} data-high=${w} data-row=${e} data-column=${t}
      tabindex=${r?0:-1} aria-label=${Bh(u)}
      data-step=${et(u)} ?data-undecided=${u.undecided}>
      <span class=${p.length>5?"number long":"number"}>${p}</span>
      ${l?af(d,n):m4(u)}
    </button>
  </td>`}var df=()=>o`<td><span class="empty"></span></td>`;var cf=s=>s?`, from pack ${s}`:"",Tr=matchMedia(Rn.cssText),g4=46,b4=50,hd=class extends b({matrix:m(c),power:{type:Number},shows:{type:String},opened:{...m(c),hasChanged:(e,t)=>e.family!==t?.family||e.column!==t?.column},outdated:{type:String},_at:$(c),_unfolded:$(c)}){static styles=[_,...tf,J];constructor(){super(),this.opened={},this.outdated="",this._at=[0,0],this._unfolded=Tr.matches,this._turned=()=>this._unfolded=Tr.matches,this._printed=()=>this._unfoldForPaper(),this._watch=new ResizeObserver(()=>this._measure()),this._scrolled=()=>this._carry()}connectedCallback(){super.connectedCallback(),this._watch.observe(this),this._turned(),Tr.addEventListener("change",this._turned),window.addEventListener("beforeprint",this._printed),window.addEventListener("afterprint",this._turned),window.addEventListener("scroll",this._scrolled,{passive:!0})}disconnectedCallback(){super.disconnectedCallback(),this._watch.disconnect(),Tr.removeEventListener("change",this._turned),window.removeEventListener("beforeprint",this._printed),window.removeEventListener("afterprint",this._turned),window.removeEventListener("scroll",this._scrolled)}willUpdate(e){if(!e.has("matrix"))return;let[t,n]=this._at;this._at=[Math.min(t,this.matrix.families.length-1),Math.min(n,this.matrix.columns.length-1)]}firstUpdated(){of()}updated(e){e.has("matrix")&&e.get("matrix")?.columns.length!==this.matrix.columns.length&&this._measure()}render(){let{families:e,columns:t,powers_w:n}=this.matrix,i=n.indexOf(this.power)/Math.max(n.length-1,1);return o`<p id="outdated" role="status">${this.outdated}</p>
    <div class="frame" style="--columns:${t.length};--levels:${n.length};--chosen:${i*100}%">
      <table role="grid" aria-describedby="outdated" ?data-outdated=${this.outdated!==""} data-shows=${this.shows}
        aria-label=${this._caption} @keydown=${this._moved} @click=${this._clicked} @focusin=${this._focused}>
        <thead>
          <tr>
            <th><span class="unseen">Interface family</span></th>
            ${t.map((r,a)=>this._columnHead(r,a))}
          </tr>
        </thead>
        <tbody>
          ${e.map((r,a)=>o`<tr>${this._familyHead(r,a)}${t.map((l,d)=>this._cell(a,d))}</tr>`)}
        </tbody>
      </table>
    </div>`}get _caption(){return`Interface families against bands: ${this.shows==="margin"?`margin in dB at ${A(this.power)}`:"largest power that still holds, in W"}`}_columnHead(e,t){let[n,...i]=e.name.split(" ");return o`<th scope="col" data-band=${e.id}>
      <button data-row="-1" data-column=${t} tabindex=${this._tab(-1,t)}
        aria-label="${e.name}, all limits${cf(e.pack)}">
        <span>${n} <small>${i.join(" ")}${po(e.pack)}</small></span>
      </button>
    </th>`}_familyHead(e,t){return o`<th scope="row" data-family=${e.id}>
      <button data-row=${t} data-column="-1" tabindex=${this._tab(t,-1)}
        aria-label="${e.name}, data sheet${cf(e.pack)}">
        <span>${e.name}${po(e.pack)}</span>
        <span class="powers" aria-hidden="true">
          <span class="largest">largest, W</span>
          ${this.matrix.powers_w.map(n=>o`<span ?data-chosen=${n===this.power}>${A(n)}</span>`)}
        </span>
      </button>
    </th>`}_cell(e,t){let{matrix:n,shows:i,opened:r}=this,a=n.powers_w.indexOf(this.power);if(n.margin_db===void 0||a===-1)return df();let l=r.family===n.families[e].id&&r.column===n.columns[t].id;return lf({matrix:n,f:e,c:t,p:a,shows:i,open:l,unfolded:this._unfolded,focusable:this._tab(e,t)===0})}_tab(e,t){return e===this._at[0]&&t===this._at[1]?0:-1}_unfoldForPaper(){this._unfolded=!0,this.isUpdatePending&&this.performUpdate()}_measure(){let e=parseFloat(getComputedStyle(N(this.renderRoot,"table")).minWidth);this.toggleAttribute("fits",e<=this.clientWidth),this._carry()}_carry(){let e=N(this.renderRoot,".frame"),{top:t,height:n}=e.getBoundingClientRect(),i=n-g4-b4;e.style.setProperty("--lift",`${this.hasAttribute("fits")?0:Math.max(0,Math.min(-t,i))}px`)}_moved(e){let{families:t,columns:n}=this.matrix,i=rf(e,this._at,t.length,n.length);i!==void 0&&(e.preventDefault(),this._button(i)?.focus())}_button([e,t]){return this.renderRoot.querySelector(`button[data-row="${e}"][data-column="${t}"]`)}_focused(e){let{row:t,column:n}=e.target.dataset;t!==void 0&&(this._at=[Number(t),Number(n)])}_clicked(e){let t=e.target.closest("button");if(!t)return;let[n,i]=[Number(t.dataset.row),Number(t.dataset.column)],r=e.target.closest(".rung"),a={family:this.matrix.families[n],column:this.matrix.columns[i],power:r?Number(r.dataset.power):this.power};this.dispatchEvent(new CustomEvent("jw-open",{detail:a,bubbles:!0,composed:!0}))}};customElements.define("jw-matrix",hd);var md=class extends b({powers:m(c),chosen:{type:Number},shows:{type:String}}){static styles=[_,g`
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
        <div>${this.powers.map(t=>this._option("power_w",t,A(t),t===this.chosen))}</div>
      </fieldset>
      <fieldset id="shows">
        <legend>Cells print</legend>
        <div>${e.map(([t,n])=>this._option("shows",t,n,t===this.shows))}</div>
      </fieldset>`}_option(e,t,n,i){return o`<label>
      <input type="radio" name=${e} value=${t} .checked=${i}
        @change=${()=>this._change({[e]:t})}>${n}
    </label>`}_change(e){this.dispatchEvent(new CustomEvent("jw-change",{detail:{changes:e,live:!1},bubbles:!0,composed:!0}))}};customElements.define("jw-power-choice",md);var pd=[["bands","Bands and powers",["powers_w","power_is","region","frequencies_hz","bands"]],["families","Families",["families"]],["keying","Keying",["keying","transmit_share","on_time_s","off_time_s"]],["line","Line and cable",["system_impedance_ohm","return_loss_asked_db","cable","cable_diameter_m"]],["site","Site",["solar_irradiance_w_per_m2","altitude_m","vibration","added_sealing"]],["wear","Wear",["matings_per_year","service_life_years","added_resistance_ohm"]]],_4=[{words:"all",value:null}],uf=["mode","vswr","ambient_temperature_c","exposure","condition"],w4={mode:{transmit_share:null,on_time_s:null,off_time_s:null},share:{transmit_share:.5,on_time_s:null,off_time_s:null},overs:{transmit_share:null,on_time_s:60,off_time_s:60}},fd=class extends b({state:m(c),refusal:m(c),_open:$(c),_unfolded:{type:Boolean,attribute:"unfolded",reflect:!0}},j){static styles=[_,g`
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
    `];constructor(){super(),this._open="",this._unfolded=!1}willUpdate(e){if(!e.has("refusal")||!this.refusal)return;let t=pd.find(([,,n])=>n.includes(this._refused));t&&(this._open=t[0]),this._refused in this.state&&(this._unfolded=!0)}render(){let e=pd.find(([t])=>t===this._open);return o`<button id="conditions" aria-expanded=${this._unfolded} aria-controls="conditions-form"
        @click=${()=>this._unfolded=!this._unfolded}>
        <span>Conditions</span><small>${uf.map(t=>this._inWords(t)).join(" · ")}</small>
      </button>
      <div id="conditions-form">
      <div class="fields always">${uf.map(t=>this._field(t))}</div>
      <div class="groups" role="group" aria-label="More conditions">
        ${pd.map(([t,n,i])=>o`<button aria-expanded=${t===this._open} aria-controls="group" data-group=${t}
            class=${i.some(r=>this._differs(r))?"changed":""}
            @click=${this._toggle}>${n}</button>`)}
      </div>
      <div id="group" class=${e?"fields group":""}>
        ${e?e[2].map(t=>this._field(t)):h}
      </div>
      </div>`}get _refused(){return de(this.refusal)}get _bands(){return this.vocabulary.lists.bands.map(e=>({...e,hidden:!e.regions.includes(String(this.state.region))}))}get _sets(){let e=this._bands.filter(({hidden:t})=>!t).map(({id:t})=>t);return[{words:"usual sixteen",value:this.vocabulary.first.matrix.bands},{words:"all",value:e}]}get _keying(){return this.state.transmit_share!==null?"share":this.state.on_time_s===null&&this.state.off_time_s===null?"mode":"overs"}_differs(e){return e in this.state&&JSON.stringify(this.state[e])!==JSON.stringify(this.vocabulary.first.matrix[e])}_field(e){let t=this.state[e],n=this.refusal&&this._refused===e?this.refusal.message:"";return e==="keying"?this._keyingField():e==="transmit_share"&&this._keying!=="share"?h:e.endsWith("time_s")&&this._keying!=="overs"?h:e==="cable_diameter_m"&&this.state.cable!==null?h:e==="bands"?o`<jw-toggles-field class="wide" name="bands" of=" of Region ${this.state.region}"
        .choices=${this._bands} .sets=${this._sets}
        hint="National limits differ from the Region’s edges; yours decide." .value=${t}
        .error=${n}></jw-toggles-field>`:e==="families"?o`<jw-toggles-field class="wide" name="families" .choices=${this.vocabulary.lists.families}
        .sets=${_4}
        hint="Pick those you own or can buy; the others leave the matrix." .value=${t}
        .error=${n}></jw-toggles-field>`:e==="powers_w"?o`<jw-list-field class="double" name="powers_w" zero="receive" .value=${t}
        .error=${n}></jw-list-field>`:e==="frequencies_hz"?o`<jw-list-field class="double" name="frequencies_hz" .value=${t} .error=${n}></jw-list-field>`:e==="added_sealing"?o`<jw-switch-field name="added_sealing" .value=${t} .error=${n}></jw-switch-field>`:typeof this.vocabulary.first.matrix[e]=="string"||e==="region"||e==="cable"?o`<jw-choice-field class=${e==="cable"?"double":""} name=${e} .value=${t}
        .error=${n} .hint=${this._hint(e)}></jw-choice-field>`:o`<jw-number-field name=${e} .value=${t} .error=${n}></jw-number-field>`}_inWords(e){let t=this.vocabulary.spoken(e,this.state[e]);return e==="vswr"?`VSWR ${t}`:t}_hint(e){let t=this.vocabulary.lists.modes.find(({id:n})=>n===this.state.mode);return e==="mode"&&t?`duty factor ${t.duty_factor.value}`:""}_keyingField(){return o`<div class="double">
      <label for="keying">How long it is on the air</label>
      <select id="keying" @change=${this._rekey}>
        ${[["mode","the mode’s own rhythm"],["share","a share of the time"],["overs","overs and pauses"]].map(([e,t])=>o`<option value=${e} .selected=${e===this._keying}>${t}</option>`)}
      </select>
    </div>`}_rekey(e){let t={changes:w4[e.target.value],live:!1};this.dispatchEvent(new CustomEvent("jw-change",{detail:t,bubbles:!0,composed:!0}))}_toggle(e){let{group:t}=e.currentTarget.dataset;this._open=this._open===t?"":t}};customElements.define("jw-scenario",fd);var gd=class extends b({state:m(c)},j){static styles=[_,g`
      dl { columns: 4; column-gap: 5mm; font-size: 7pt; line-height: 1.3; }
      div { break-inside: avoid; }
      dt, dd { display: inline; }
      dt { color: var(--soft); }
      dt::after { content: ': '; }
    `];render(){let e=Object.keys(this.vocabulary.words).filter(t=>(this.state[t]??[]).length!==0);return o`<dl>
      ${e.map(t=>o`<div><dt>${this.vocabulary.labelOf(t)}</dt><dd>${this.vocabulary.spoken(t,this.state[t])}</dd
            ></div>`)}
    </dl>`}};customElements.define("jw-summary",gd);var y4=3;function x4(s){let e=10**(Math.floor(Math.log10(s))-y4+1),t=Math.floor(s/e*(1+1e-9))*e;return t>=1e3?`${k(t/1e3)} kW`:A(t)}var bd=class extends b({answer:m(c),waiting:{type:String},outdated:{type:Boolean,reflect:!0}}){static styles=[_,M(W),g`
      :host { display: grid; gap: 8px; align-content: start; min-height: 15rem; }
      :host([outdated]) { opacity: 0.6; }
      .verdict { display: flex; flex-wrap: wrap; gap: 6px 10px; align-items: center; }
      strong { padding: 5px 10px; border-radius: var(--round); font-size: 1.05rem; }
      [data-step='refused'] { background: var(--refused); color: var(--refused-ink); }
      dl { display: grid; grid-template-columns: auto minmax(0, 1fr); gap: 2px 12px; font-size: 0.92rem; }
      dt { color: var(--soft); }
      ul { list-style: none; margin: 0; padding: 0; display: grid; gap: 4px; }
      li { display: grid; gap: 0 8px; }
      li button { text-align: left; padding: 4px 12px; line-height: 1.3; display: grid; }
      li small { color: var(--soft); font-size: 0.82rem; }
      h3 { font-size: 0.9rem; }
      @media (min-width: 700px) {
        :host { min-height: 8.2rem; }
        ul { grid-template-columns: repeat(auto-fill, minmax(250px, 1fr)); }
      }
      @media (max-width: 480px) {
        dl { grid-template-columns: minmax(0, 1fr); }
        dd { margin-bottom: 4px; }
      }
    `];constructor(){super(),this.waiting="",this.outdated=!1}render(){let e=this.answer?.verdict;if(!this.answer||!e)return o`<p class="quiet" role="status">${this.waiting}</p>`;let{better:t,doubts:n,largest_power_w:i,limited_by:r}=this.answer;return o`<div class="verdict" role="status"><strong data-step=${this._step}
        data-verdict=${e.step}>${e.headline}</strong><button class="why"
        @click=${()=>x(this,"jw-why",{})}>Why</button><p>${e.sentence}</p></div>
      <dl>
        ${i===null?h:o`<dt>Largest safe power</dt><dd id="largest">${x4(i)}</dd>`}
        ${r&&!e.sentence.includes(r.sentence)?o`<dt>Limited by</dt><dd id="limit">${r.sentence}</dd>`:h}
        ${n.map(({name:a,sentence:l})=>o`<dt>${a}</dt><dd>${l}</dd>`)}
      </dl>
      ${t.length>0?o`<h3 id="better">Better</h3><ul aria-labelledby="better">${t.map(a=>o`<li><button @click=${()=>x(this,"jw-ask",{values:a.changes})}
                ><b>${a.title}</b><small>${a.sentence}</small></button></li>`)}</ul>`:h}
    `}get _step(){let{margin_db:e,verdict:t}=this.answer;return t?.step==="refused"?"refused":e===null?"holds":B(e)}};customElements.define("jw-answer",bd);var $4=[0,5,10,25,50,100,200,400,500,750,1e3,1500],v4=[1,1.2,1.5,2,2.5,3,4,5,10],Ar=" Hz",k4=[["indoor","indoors"],["sheltered","sheltered"],["exposed","outdoors"],["immersed","under water"]],S4=s=>s>=1e3?`${k(s/1e3)} kW`:A(s),_d=class extends b({state:m(c),cell:m(c)},j){static styles=[_,g`
      p { font-size: 1.15rem; line-height: 44px; }
      span { white-space: nowrap; }
      select.word {
        appearance: none; width: auto; max-width: 100%; field-sizing: content; min-height: var(--target);
        padding: 0 1.05em 0 2px; border: 0; border-radius: 0; font: inherit; font-weight: 650; line-height: 1.2;
        cursor: pointer; background: linear-gradient(var(--edge) 0 0) 0 calc(50% + 0.75em) / 100% 2px no-repeat;
      }
      select.word option { background: var(--card); color: var(--ink); font-weight: 400; }
      .menu { position: relative; }
      .menu::after {
        content: '▾'; position: absolute; right: 2px; top: 0; line-height: 1.2; pointer-events: none;
        color: var(--soft); font-size: 0.8em;
      }
      @media (max-width: 480px) { p { font-size: 1.05rem; } }
    `];render(){let{cell:e,state:t,vocabulary:n}=this,{lists:i}=n,r=i.families.map(({id:w,name:v})=>[w,z.question.families[w]??v]),a=i.modes.map(({id:w,name:v})=>[w,z.question.modes[w]??v]),l=i.bands.filter(({regions:w})=>w.includes(String(t.region))).map(({id:w,name:v})=>[w,v]),d=[...new Set([...t.frequencies_hz,e.frequency_hz??[]].flat())],u=[...l,...d.map(w=>[`${w}${Ar}`,O(w)])],f=[...t.powers_w,t.power_w].reduce(_e,$4).map(w=>[w,w===0?"no power (receive)":S4(w)]),y=_e(v4,t.vswr).map(w=>[w,k(w)]);return o`<p role="group" aria-label="The question">
      ${this._menu("family","Connector",r,e.family)}
      <span>with ${this._menu("power_w","Power",f,t.power_w,Number)}</span>
      ${this._menu("mode","Mode",a,t.mode)}
      <span>on ${this._menu("column","Band",u,e.band??`${e.frequency_hz}${Ar}`)},</span>
      <span>SWR ${this._menu("vswr","SWR",y,t.vswr,Number)},</span>
      ${this._menu("exposure","Where it is",k4,t.exposure)}
    </p>`}_menu(e,t,n,i,r=String){let a=n.some(([l])=>l===i)?n:[...n,[i,String(i)]];return o`<span class="menu"><select class="word" aria-label=${t} data-name=${e}
      @change=${l=>this._chose(e,r(l.target.value))}>
      ${a.map(([l,d])=>o`<option value=${l} .selected=${l===i}>${d}</option>`)}
    </select></span>`}_chose(e,t){x(this,"jw-ask",{values:e==="column"?j4(t):{[e]:t}})}},j4=s=>s.endsWith(Ar)?{frequency_hz:Number(s.slice(0,-Ar.length))}:{band:s};customElements.define("jw-sentence",_d);function hf(s,e){let t=s.split(/(?<=\s)/);for(let n=Math.min(t.length,3);n>0;n--){let i=t.slice(-n).join("").toLowerCase(),r=e.filter(a=>i.trim()!==""&&a.toLowerCase().startsWith(i));if(r.length>0)return r.slice(0,8).map(a=>t.slice(0,-n).join("")+a)}return[]}var E4=z.requests.question.text.longest,wd=class extends b({unread:m(c),missing:m(c),busy:{type:Boolean},problem:{type:String},_offers:$(c)}){static styles=[_,g`
      form { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 6px; }
      #text { font-size: 1rem; }
      ul { list-style: none; margin: 6px 0 0; padding: 0; display: grid; gap: 4px; font-size: 0.9rem; }
      li { display: flex; flex-wrap: wrap; gap: 4px 8px; align-items: center; }
      li button { font-size: 0.85rem; padding: 0 10px; }
    `];constructor(){super(),this.unread=[],this.missing=[],this.problem="",this._offers=[]}render(){let e=[...this.missing,this.problem].filter(Boolean);return o`<form @submit=${this._submitted}>
        <label class="unseen" for="text">Or type the question</label>
        <input id="text" type="text" list="offers" autocomplete="off" autocapitalize="off" spellcheck="false"
          maxlength=${E4} enterkeyhint="go" placeholder="or type it: so239 1kw ft8 10m swr 3"
          aria-describedby="unread" aria-invalid=${e.length>0?"true":"false"}
          @input=${this._typed}>
        <datalist id="offers">${this._offers.map(t=>o`<option value=${t}></option>`)}</datalist>
        <button aria-busy=${this.busy?"true":"false"}>Answer</button>
      </form>
      <div id="unread" role="status">${this.unread.length+e.length>0?o`<ul>
              ${this.unread.map(t=>this._unread(t))}
              ${e.map(t=>o`<li>${t}</li>`)}
            </ul>`:h}</div>`}_unread({typed:e,words:t,near:n}){let i=t.includes(e)?t:`“${e}”: ${t}`;return o`<li><span>${i}</span>${n.map(r=>o`<button type="button" @click=${()=>this._put(e,r)}>${r}</button>`)}</li>`}get _field(){return N(this.renderRoot,"#text")}_typed(){this._offers=hf(this._field.value,z.question.names)}_submitted(e){e.preventDefault(),x(this,"jw-type",{text:this._field.value})}_put(e,t){this._field.value=this._field.value.replace(e,()=>t),x(this,"jw-type",{text:this._field.value}),this._field.focus()}};customElements.define("jw-typed-question",wd);var O4=200,mf={asked:null,sentence:"",read:[],unread:[],missing:[],verdict:null,margin_db:null,largest_power_w:null,limited_by:null,doubts:[],better:[]},yd=class extends b({state:m(c),transport:m(c),stage:{type:String},_cell:$(c),_typed:$(c)},j){static styles=[_,g`
      :host {
        display: grid; gap: 6px; padding: 6px 12px 12px; background: var(--card);
        border: 1px solid var(--line); border-radius: var(--round);
      }
      jw-answer { margin-top: 4px; }
      .onpaper { display: none; }
      @media print {
        :host { padding: 0; border: 0; }
        :host(:not([chosen])), jw-sentence, jw-typed-question, jw-answer { display: none; }
        .onpaper { display: block; font-size: 9pt; }
      }
    `];constructor(){super(),this.stage="",this._cell=Rp,this._typed=mf,this._answer=new ie(this,(e,t)=>this.transport.ask("question",e,t)),this._reader=new ie(this,(e,t)=>this.transport.ask("question",e,t))}disconnectedCallback(){super.disconnectedCallback(),clearTimeout(this._rest),this._asked=void 0}willUpdate(e){e.has("state")&&(this._cell=Dl(this.state)??this._cell)}updated(){this.toggleAttribute("chosen",Dl(this.state)!==void 0);let e=Kl(this.state,this._cell),t=JSON.stringify(e);this.transport===void 0||t===this._asked||(this._asked=t,clearTimeout(this._rest),this._rest=setTimeout(()=>this._answer.askNext(e),O4))}render(){let{error:e,result:t}=this._answer,{unread:n,missing:i}=this._typed;return o`<h2 class="unseen">Ask about one joint</h2>
      <jw-sentence .state=${this.state} .cell=${this._cell} @jw-ask=${this._chosen}></jw-sentence>
      <jw-typed-question .unread=${n} .missing=${i} .problem=${this._reader.error?.message??""}
        ?busy=${this._reader.status==="pending"} @jw-type=${this._type}></jw-typed-question>
      <jw-answer .answer=${e?void 0:t} ?outdated=${this._isOutdated} .waiting=${this._waiting}
        @jw-ask=${this._chosen} @jw-why=${this._why}></jw-answer>
      ${t?.verdict&&!e?this._onPaper(t):h}`}_onPaper({sentence:e,verdict:t,limited_by:n}){let i=`${e}: ${t?.headline}. ${t?.sentence}`,r=n&&!i.includes(n.sentence)?` ${n.sentence}`:"";return o`<p class="onpaper">${i}${r}</p>`}get _isOutdated(){let{answered:e}=this._answer;return e!==void 0&&JSON.stringify(e)!==this._asked}get _waiting(){return this._answer.error?this._answer.error.message:this.stage===ut||this.stage===""?"Calculating…":"The core is starting; the answer comes by itself."}_chosen(e){this._typed=mf,this._change(e.detail.values)}async _type(e){let{text:t}=e.detail;await this._reader.ask({...Kl(this.state,this._cell),text:t});let{answered:n,error:i,result:r}=this._reader;i||r===void 0||n.text!==t||(this._typed=r,r.asked&&r.read.length>0&&this._change(Object.fromEntries(r.read.map(({field:a,value:l})=>[a,l]))))}_change(e){let{most:t}=this.vocabulary.fieldOf("powers_w"),n=zp(e,this._cell,this.state,this.vocabulary.lists,Number(t));x(this,"jw-asked",{changes:n})}_why(e){e.stopPropagation(),x(this,"jw-why",{cell:this._cell})}};customElements.define("jw-question",yd);var T4=[["family",s=>s.family.name],["band",s=>s.column.name],["low_hz",s=>s.column.low_hz],["high_hz",s=>s.column.high_hz],["power_w",s=>s.power],["margin_db",s=>s.margin],["margin_high_db",s=>s.high],["set_by",s=>s.limit],["return_loss_db",s=>s.returnLoss],["return_loss_high_db",s=>s.returnLossHigh],["computed_at_hz",s=>s.column.high_hz],["undecided",s=>s.undecided],["refused_by",s=>s.refusedBy?.name],["marks",s=>s.marks.map(e=>e.name).join("; ")],["figure_from_memory_is_lower",s=>s.lowerFromMemory],["largest_power_w",s=>s.largest],["family_from_pack",s=>s.family.pack],["band_from_pack",s=>s.column.pack]];function pf(s){let e=s.families.flatMap((t,n)=>s.columns.flatMap((i,r)=>s.powers_w.map((a,l)=>yt(s,n,r,l))));return wt(T4,e)}var ff={csv:async s=>H("jointwise-matrix.csv","text/csv",pf(s)),json:async(s,e)=>ps("jointwise-matrix.json",{request:Ma(e,gs()),result:s}),print:async()=>window.print()},gf=new Set(["csv","json"]);var zn=class extends b({file:{type:String},loadCharts:m(c),loadEmbed:m(c)},Le){static view="matrix";static ownNames=["families","frequencies_hz","powers_w","shows","view","family","band","frequency_hz"];constructor(){super(),this.file="",this._matrix=this._enquiry("matrix"),this._cell=this._enquiry("cell"),this._catalogue=this._enquiry("catalogue")}_askAnew(){super._askAnew(),this._cellAsked=void 0}createRenderRoot(){return this}updated(e){if(this.toggleAttribute("beside",qn(this._state)!==void 0),this.transport===void 0)return;let t=JSON.stringify(this._state);(t!==this._stateAsked||this._asked===void 0||e.has("transport"))&&this._askAll(),this._stateAsked=t}render(){let{_state:e,_shown:t}=this,n=qn(e);return o`<div @jw-change=${this._changed} @jw-open=${this._opened}
        @jw-close=${this._closed} @jw-export=${this._exported}>
      ${this._progress(this._matrix)}
      <main>
        ${this._trouble()}
        <jw-question .state=${e} .transport=${this.transport} .stage=${this.stage}
          @jw-asked=${({detail:i})=>this._choose(i.changes)} @jw-why=${this._explained}></jw-question>
        <div class="bar tools"><div class="bar">${this._undoButtons()}<button id="reset"
          @click=${()=>this._reset()}>Reset</button></div><jw-exports file=${this.file}></jw-exports></div>
        <jw-scenario .state=${e} .refusal=${this._matrix.error}></jw-scenario>
        <div class="bar">
          <jw-power-choice .powers=${t.powers_w} .chosen=${this._power} .shows=${e.shows}></jw-power-choice>
        </div>
        <h2 class="onpaper">${e.shows==="margin"?`Margin in dB, at ${A(this._power)} where outlined`:"Margin in dB"}</h2>
        <jw-matrix .matrix=${t} .power=${this._power} .shows=${e.shows} .outdated=${this._outdated}
          .opened=${{family:e.family,column:Mn(e,t)?.id}}></jw-matrix>
        <section class="below">
          <jw-legend .gates=${z.matrix.gates}
            ?packed=${[...t.families,...t.columns].some(({pack:i})=>i)}></jw-legend>
          <jw-summary class="onpaper" .state=${this._computed}></jw-summary>
          <jw-cautions .cautions=${z.cautions}></jw-cautions>
        </section>
        ${this._withoutCore?o`<section class="tables"><slot></slot></section>`:h}
      </main>
      <jw-sheet .heading=${Bp(n,e,t,this.vocabulary.lists)}>
        ${n?o`<jw-detail .kind=${n} .state=${e} .matrix=${t} .cell=${this._wantedCell}
              .catalogue=${this._catalogue.result} .error=${this._cell.error??this._catalogue.error}
              .power=${this._power} .loadCharts=${this.loadCharts} .loadEmbed=${this.loadEmbed}
              .transport=${this.transport}></jw-detail>`:h}
      </jw-sheet>
    </div>`}get _shown(){return this._matrix.result??Ip(this._state,this._refused,this.vocabulary)}get _refused(){return this._matrix.error!==void 0}get _outdated(){return!this._refused||this._asksTheSame(this._computed,this._state)?"":this._matrix.result?"Out of date: these are the numbers from before the change that could not be computed.":"Not what was asked for, which could not be computed: these are the built-in numbers of a first visit."}_asksTheSame(...e){let[t,n]=e.map(i=>JSON.stringify(qe(i,this.vocabulary)));return t===n}get _withoutCore(){return this._matrix.result===void 0&&Tn(this._matrix.error)}get _power(){return cn(this._shown.powers_w,this._state.power_w)}get _computed(){let{answered:e}=this._matrix;return!e&&!this._refused?this._state:{...this._first,power_w:this._state.power_w,...e}}get _wantedCell(){let{answered:e,result:t}=this._cell;return e&&Yl(e,this._state)?t:void 0}_trouble(){let{error:e}=this._matrix;return!e||de(e)in this.vocabulary.words?h:o`<p class="trouble" role="alert">${e.message} <button
      @click=${()=>this._askAll(!0)}>Try again</button></p>`}_askAll(e=!1){let t=qe(this._state,this.vocabulary),n=JSON.stringify(t);(e||n!==this._asked)&&this._matrix.askNext(t),this._asked=n;let i=qn(this._state);i&&i!=="website"&&["initial","error"].includes(this._catalogue.status)&&this._catalogue.ask({}),i==="derivation"&&this._askCell()}_askCell(){let e=An({...this._state,power_w:this._power}),t=this._cellAsked;this._cellAsked=e,!(t&&this._cell.status!=="error"&&JSON.stringify(t)===JSON.stringify(e))&&(t&&Yl(t,this._state)?this._cell.askNext(e):this._cell.ask(e))}get _state(){let e=super._state,{power_w:t}=this.station.settings;return t===void 0?e:{...e,powers_w:_e(e.powers_w,t)}}_changed(e){let{changes:t,live:n}=e.detail,{power_w:i}=this.station.settings,r=t.powers_w&&i!==void 0&&!t.powers_w.includes(i);this._change(r?{...t,power_w:cn(t.powers_w,i)}:t,n)}_show(e){this._change(e,{isStep:!1})}_opened(e){let{family:t,column:n,power:i}=e.detail,r=n!==void 0&&Vl(n);this._isAsked=!1,this._show({...Qt,family:t?.id??null,band:n===void 0||r?null:n.id,frequency_hz:r?n.low_hz:null,power_w:i})}_choose(e){this._isAsked=!0,this._change(e)}_explained(e){this._isAsked=!0,this._show({...Qt,...e.detail.cell})}_closed(){this._show(this._isAsked&&qn(this._state)==="derivation"?{view:Zt}:Qt)}openMethods(){this._show({view:"methods"})}_readOwn(e,t,n){return ds(e,t,n)}async _exported(e){if(e.detail.kind==="link")return this._copyLink();if(e.detail.kind==="website")return this._show({...Qt,view:"website"});if(this._shown.margin_db===void 0&&gf.has(e.detail.kind)){this._notice({text:"The core is still at work on the numbers; try again when they are here."});return}this._notice(await ff[e.detail.kind](this._shown,qe(this._computed,this.vocabulary)))}};customElements.define("jw-matrix-view",zn);var bf=({bands:s,cables:e,conditions:t,families:n,modes:i})=>({region:{label:"ITU Region",options:{1:"Region 1",2:"Region 2",3:"Region 3"}},families:{label:"Families",named:n},bands:{label:"Bands",named:s},frequencies_hz:{label:"Spot frequencies",factor:1e6,unit:"MHz"},powers_w:{label:"Power levels",unit:"W"},power_w:{label:"Power in the cells"},power_is:{label:"Powers are",options:{forward:"forward power",net:"net power (forward less reflected)"}},mode:{label:"Mode",entries:i},transmit_share:{label:"Share on the air",step:.01},on_time_s:{label:"One over",step:.01},off_time_s:{label:"Pause after it",step:.01},vswr:{label:"VSWR on the line",step:.1,slider:"logarithmic"},system_impedance_ohm:{label:"Line impedance",step:1},return_loss_asked_db:{label:"Return loss asked for",step:.5},cable:{label:"Cable",options:oe("the family’s customary one",e)},cable_diameter_m:{label:"Other cable, diameter",step:.1,factor:.001,unit:"mm"},ambient_temperature_c:{label:"Air in the shade",step:1,slider:"linear"},solar_irradiance_w_per_m2:{label:"Sun on the joint",step:10},altitude_m:{label:"Altitude",step:10},exposure:{label:"Exposure",options:{indoor:"indoors",sheltered:"outdoors, sheltered",exposed:"outdoors, exposed",immersed:"under water"}},added_sealing:{label:"Taped or booted against water"},vibration:{label:"Vibration",options:{none:"none",vehicle:"vehicle",severe:"severe"}},matings_per_year:{label:"Swaps per year",step:1},service_life_years:{label:"Years in service",step:1},condition:{label:"Joint condition",entries:t},added_resistance_ohm:{label:"Added contact resistance",step:.001}});var _f={id:zn.view,label:"Matrix",fields:Np,words:bf,element:({transport:s,stage:e,file:t,loadCharts:n,loadEmbed:i})=>o`<jw-matrix-view class="view" .transport=${s} .stage=${e} .file=${t}
      .loadCharts=${n} .loadEmbed=${i}></jw-matrix-view>`};/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var wf=(s,e,t)=>{let n=new Map;for(let i=e;i<=t;i++)n.set(s[i],i);return n},yf=ls(class extends dt{constructor(s){if(super(s),s.type!==Ic.CHILD)throw Error("repeat() can only be used in text expressions")}dt(s,e,t){let n;t===void 0?t=e:e!==void 0&&(n=e);let i=[],r=[],a=0;for(let l of s)i[a]=n?n(l,a):a,r[a]=t(l,a),a++;return{values:r,keys:i}}render(s,e,t){return this.dt(s,e,t).values}update(s,[e,t,n]){let i=Vs(s),{values:r,keys:a}=this.dt(e,t,n);if(!Array.isArray(i))return this.ut=a,r;let l=this.ut??=[],d=[],u,p,f=0,y=i.length-1,w=0,v=r.length-1;for(;f<=y&&w<=v;)if(i[f]===null)f++;else if(i[y]===null)y--;else if(l[f]===a[w])d[w]=ct(i[f],r[w]),f++,w++;else if(l[y]===a[v])d[v]=ct(i[y],r[v]),y--,v--;else if(l[f]===a[v])d[v]=ct(i[f],r[v]),Ye(s,d[v+1],i[f]),f++,v--;else if(l[y]===a[w])d[w]=ct(i[y],r[w]),Ye(s,i[f],i[y]),y--,w++;else if(u===void 0&&(u=wf(a,w,v),p=wf(l,f,y)),u.has(l[f]))if(u.has(l[y])){let S=p.get(a[w]),q=S!==void 0?i[S]:null;if(q===null){let K=Ye(s,i[f]);ct(K,r[w]),d[w]=K}else d[w]=ct(q,r[w]),Ye(s,i[f],q),i[S]=null;w++}else ii(i[y]),y--;else ii(i[f]),f++;for(;w<=v;){let S=Ye(s,d[v+1]);ct(S,r[w]),d[w++]=S}for(;f<=y;){let S=i[f++];S!==null&&ii(S)}return this.ut=a,Rt(s,d),Ve}});var xf=s=>({past:[],present:s,future:[]});function xd(s,e){return e===s.present?s:{past:[...s.past,s.present].slice(-200),present:e,future:[]}}function $f({past:s,present:e,future:t}){return s.length===0?{past:s,present:e,future:t}:{past:s.slice(0,-1),present:s[s.length-1],future:[e,...t]}}function vf({past:s,present:e,future:t}){return t.length===0?{past:s,present:e,future:t}:{past:[...s,e],present:t[0],future:t.slice(1)}}var kf=g`
  .chips { min-width: 0; }
  .chips > div { display: flex; flex-wrap: wrap; gap: 4px; align-items: center; }
  .chips .chip { padding: 0 10px; font-size: 0.9rem; overflow-wrap: anywhere; text-align: left; }
  .chips .more { display: flex; gap: 4px; min-width: 0; }
  .chips .more :is(select, input[type='text']) { width: 11rem; flex: 0 1 11rem; }
  .label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
  .hint { display: block; margin-top: 2px; font-size: 0.75rem; line-height: 1.35; color: var(--soft); }
`,A4=({currentTarget:s})=>s.closest(".chips").querySelector("select, input")?.focus();function Sf({label:s,hint:e="",chosen:t,put:n,offered:i,longest:r}){let a=p=>i?.find(f=>f.id===p)?.name??p,l=({currentTarget:p})=>{let f=p.closest(".more").querySelector("select, input"),y=f.value.trim();f.value="",f.focus(),y!==""&&!t.includes(y)&&n([...t,y])},d=p=>{p.key==="Enter"&&(p.preventDefault(),l(p))},u=(p,f)=>{A4(p),n(t.toSpliced(f,1))};return o`<div class="chips" role="group" aria-label=${s}>
    <span class="label" aria-hidden="true">${s}</span>
    <div>
      ${t.map((p,f)=>o`<button type="button" class="chip" aria-pressed="true" title="Take away"
          @click=${y=>u(y,f)}>${a(p)} <span aria-hidden="true">✕</span></button>`)}
      <div class="more">
        ${i?o`<select aria-label="Another for ${s}" @keydown=${d}>
              <option value="" selected>choose…</option>
              ${i.filter(({id:p})=>!t.includes(p)).map(({id:p,name:f})=>o`<option value=${p}>${f}</option>`)}
            </select>`:o`<input type="text" aria-label="Another for ${s}" autocomplete="off" maxlength=${r??80}
              @keydown=${d}>`}
        <button type="button" @click=${l}>Add <span class="unseen">to ${s}</span></button>
      </div>
    </div>
    <span class="hint">${e}</span>
  </div>`}var He=(s,e)=>e.reduce((t,n)=>t?.[n],s);function ye(s,e,t){if(e.length===0)return t;let[n,...i]=e,r=ye(s?.[n],i,t);if(Array.isArray(s)){let d=Number(n);return r===void 0?s.toSpliced(d,1):s.with(d,r)}if(r!==void 0)return{...s,[n]:r};let{[n]:a,...l}=s??{};return l}var Me=s=>s.join("-");var es={low:", least",high:", most"},Nn=new Set(["id","source","kind","order","overrides","sources"]);function $d({unit:s="",sheet_unit:e=s}){let[t,n]=[e,s].map(i=>Lt("",i)?.factor??1);return Number((t/n).toPrecision(12))}var qr=({unit:s="",sheet_unit:e=s})=>e==="1"?"":e,jf=({type:s})=>["number","quantity","interval"].includes(s),q4=(s,{type:e})=>e==="interval"?Object.entries(es).map(([t,n])=>[`${s}-${t}`,n]):[[s,""]];function M4(s){let e=!s.required;return jf(s)?{type:"number",nullable:e,min:s.min,max:s.max,unit:qr({unit:s.unit})}:s.type==="list"?{type:"list",items:s.of,least:s.least,most:s.most}:s.type==="boolean"?{type:"boolean"}:{type:s.choices?"choice":"text",nullable:e,longest:s.longest??200}}function C4(s,e){let{label:t="",choices:n,required:i,of:r}=s,a=i?{}:{"":"not given"};return{label:t+e,...jf(s)?{unit:qr(s),factor:$d(s)}:{},...r?.unit?{unit:r.unit}:{},...n?{options:{...a,...n}}:{}}}var R4=s=>s.type!=="map"&&s.type!=="part"&&s.of?.type!=="part",Ef=(s,e)=>Object.entries(s).map(([t,n])=>{let i=Object.entries(n).filter(([,r])=>R4(r));return[t,i.flatMap(([r,a])=>q4(r,a).map(([l,d])=>e(l,a,d)))]}),Of=s=>Object.fromEntries(Ef(s,(e,t)=>[e,M4(t)]).map(([e,t])=>[e,Object.fromEntries(t)])),Tf=s=>Object.fromEntries(Ef(s,(e,t,n)=>[e,C4(t,n)]).flatMap(([e,t])=>t.map(([n,i])=>[`${e}.${n}`,i]))),Ms=s=>Object.entries(s.Pack).filter(([e,t])=>t.of?.type==="part"&&!Nn.has(e)).map(([e,{of:t,label:n=""}])=>({table:e,part:t.of,label:n}));function ts(s,e){let t={text:()=>"",boolean:()=>!1,list:()=>[],map:()=>({}),part:({of:i})=>ts(s,i),interval:()=>({low:null,high:null})},n=Object.entries(s[e]).filter(([,{required:i}])=>i);return Object.fromEntries(n.map(([i,r])=>[i,t[r.type]?.(r)??null]))}var Mr=40,Af="datasheet",z4="My own data",Cr={id:"",name:"",version:"1",sources:[]},N4=s=>s.normalize("NFKD").toLowerCase().replace(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,Mr)||"own";function Ln(s,e){let t=new Set(e),n=N4(s);if(!t.has(n))return n;for(let i=2;;i++){let r=`_${i}`,a=`${n.slice(0,Mr-r.length)}${r}`;if(!t.has(a))return a}}var L4=(s,e)=>(s[e]??[]).map(({id:t})=>t);function qf(s,e,t,n=!1){let{overrides:i={}}=s,r={...s,[e]:[...s[e]??[],t]};return n?{...r,overrides:{...i,[e]:[...i[e]??[],t.id]}}:r}function Mf(s,e,t){let{id:n}=s[e][t],i=Pn(e,n),{overrides:r={},sources:a}=s,l={...s,[e]:s[e].toSpliced(t,1)},d=a.filter(f=>f.id!==i||JSON.stringify(l).includes(`"source":"${i}"`)),u=r[e]?.includes(n),p=u?{...r,[e]:r[e].filter(f=>f!==n)}:r;return{...l,sources:d,...u?{overrides:p}:{}}}function Cf(s,e,t,n){let i=Ln(`${e.name||"own"} ${n}`.slice(0,Mr-3),L4(e,t));return{...ts(s,n),id:i,source:Pn(t,i),kind:Af}}var Pn=(s,e)=>`own_${s}_${e}`.slice(0,Mr),Rf=s=>{if(typeof s!="object"||s===null)return[];let e=Object.values(s).flatMap(Rf);return typeof s.source=="string"?[s.source,...e]:e};function ss(s,e){let[t,n]=e,i=s[t][n],r=Pn(t,i.id),a=new Set(s.sources.map(({id:l})=>l));return a.has(r)?r:Rf(i).find(l=>a.has(l))??r}function Cs(s,e){let t=ss(s,e);return s.sources.some(n=>n.id===t)?s:{...s,sources:[...s.sources,{id:t,title:z4,seen:"read"}]}}var Rr=(s,e)=>s.sources.some(({id:t})=>t===e);function zf(s,e){let[t,n]=e,i=r=>{if(typeof r!="object"||r===null)return[];let a=Object.values(r).flatMap(i);return r.kind&&Rr(s,r.source)?[r.kind,...a]:a};return i(s[t][n])[0]??Af}function Nf(s,e,t){let[n,i]=e,r=a=>{if(Array.isArray(a))return a.map(r);if(typeof a!="object"||a===null)return a;let l=Object.fromEntries(Object.entries(a).map(([d,u])=>[d,r(u)]));return a.kind&&Rr(s,a.source)?{...l,kind:t}:l};return ye(s,[n,i],r(s[n][i]))}function Lf(s,e,t,n){let i=He(s,e);if(i?.value===t)return s;if(t===null)return ye(s,e,void 0);if(i&&Rr(s,i.source))return ye(s,e,{...i,value:t,note:""});let r=Cs(s,e);return ye(r,e,{value:t,source:ss(r,e),kind:n,note:""})}function Pf(s,e,t,n){let i=ye(s,e,t),r=e.slice(0,-1),a=He(i,r);if(typeof a?.source!="string"||Rr(i,a.source))return i;let l=Cs(i,e);return ye(l,r,{...a,source:ss(l,e),kind:n})}function Wf(s,e,t,n,i){let r=He(e,t)??[],[a,l,...d]=Object.entries(s[n]).filter(([,{type:w}])=>w==="number").map(([w])=>w),u=r.at(-1)??{},p=Object.fromEntries(d.filter(w=>w in u).map(w=>[w,u[w]])),f=Cs(e,t),y={...ts(s,n),...p,[a]:null,[l]:null};return ye(f,t,[...r,{...y,source:ss(f,t),kind:i}])}function If(s,e,t,n,i){let r=ts(s,n);if(!("source"in r))return ye(e,t,r);let a=Cs(e,t);return ye(a,t,{...r,source:ss(a,t),kind:i})}var vd=s=>`${JSON.stringify(s,null,2)}
`,Bf=s=>({sources:[],...JSON.parse(s)});var P4=/\b([a-z]+(?:_[a-z0-9]+)+)\b(?:, (-?[\d.]+(?:e[+-]?\d+)?))?/g,W4=/the high end, (-?[\d.]+(?:e[+-]?\d+)?)/,Hf=(s,e)=>k(Number((s/$d(e)).toPrecision(12)),6),Rs=(s,e)=>`${Hf(s,e)} ${qr(e)}`.trim(),Lr=s=>`${Hf(s.min,s)} to ${Rs(s.max,s)}`;function zs(s,e){return typeof s.name=="string"?s.name:"joins"in s?`${e(s.id)} to others`:"plug"in s?s.plug&&s.jack?`${e(s.plug)} on ${e(s.jack)}`:"new":Number.isFinite(s.power_w)?`${k(s.power_w,6)} W`:"new"}function Ff(s,e,t,n){let i={type:"part",of:"Pack"},r=[];return t.forEach((a,l)=>{if(i.type==="part")i=s[i.of]?.[a]??{type:""},i.type!=="part"&&i.type!=="map"&&r.push(i.label);else if(i.type==="list"){i=i.of;let d=He(e,t.slice(0,l+1));r[r.length-1]+=l===1?` ${d?zs(d,n):""}`.trimEnd():` ${Number(a)+1}`}else i.type==="map"?(r.push(`${i.label} ${a}`),i=i.of):es[a]&&(r[r.length-1]+=es[a])}),{label:r.join(", "),brief:r.at(-1)??"",facts:i.type===""?null:i}}var Uf=({min:s,max:e},t)=>Number.isFinite(t)&&(t<Number(s)||t>Number(e)),Df=(s,e,t)=>Uf(s,e)?`${t} is ${Rs(e,s)}; allowed: ${Lr(s)}.`:"",zr=s=>s==null;function kd(s,e,t){return zr(e)?s.required?[{path:t,allowed:Lr(s)}]:[]:Uf(s,e)?[{path:t,given:Rs(e,s),allowed:Lr(s)}]:[]}function Nr(s,e,t,n){switch(e.type){case"part":return zr(t)?[]:Object.entries(s[e.of]).filter(([i])=>!Nn.has(i)||i==="sources").flatMap(([i,r])=>Nr(s,r,t[i],[...n,i]));case"list":{let i=Array.isArray(t)?t:[],r=e.least??0;return[...i.length<r?[{path:n,allowed:`at least ${r}`}]:[],...i.flatMap((l,d)=>Nr(s,e.of,l,[...n,d]))]}case"map":return Object.entries(t??{}).flatMap(([i,r])=>Nr(s,e.of,r,[...n,i]));case"interval":return zr(t)&&!e.required?[]:Object.keys(es).flatMap(i=>kd({...e,required:!0},t?.[i]?.value,[...n,i]));case"number":return kd(e,t,n);case"quantity":return kd(e,t?.value,n);case"choice":case"label":return e.required&&zr(t)?[{path:n,allowed:e.choices?"one of the list":"a text"}]:[];case"text":{let i=(t??"").length<(e.shortest??0);return e.required&&i?[{path:n,allowed:e.table?"one of the list":"a text"}]:[]}default:return[]}}var Gf=(s,e,t)=>Nr(s,{type:"part",of:"Pack"},e,[]).map(({path:n,given:i,allowed:r})=>{let{label:a,brief:l}=Ff(s,e,n,t),d=`is ${i??"empty"}; allowed: ${r}.`;return{path:n,words:`${a} ${d}`,brief:`${l} ${d}`,isTold:i!==void 0}});function I4(s){let[,e]=/(?:^|: )([a-z_]+(?:\[\d+\])?(?:[.[][^: ]*)?)$/.exec(s)??[],n=(e??"").split(/[.[\]]+/).filter(Boolean).map(i=>/^\d+$/.test(i)?Number(i):i);return n.at(-1)==="value"?n.slice(0,-1):n}var B4=(s,e)=>e.map((t,n)=>n>0&&e[n-1]==="regions"?String(t):t),H4=(s,e,t)=>s[t]?.[e]??Object.values(s).find(n=>e in n)?.[e];function Kf(s,e,{message:t,field:n="",value:i,allowed:r=""},a){let l=B4(s,I4(n)),{label:d,brief:u,facts:p}=Ff(s,e,l,a);if(!p||!d)return{path:[],words:t};let f=Number(i),y=p.sheet_unit!==void 0&&i!==""&&Number.isFinite(f)&&i!==null,w=Ms(s).find(({table:K})=>K===l[0])?.part??"Pack",v=String(r).replace(/^a number from .*/,p.min===void 0?"$&":Lr(p)).replace(W4,(K,rt)=>`what stands as most, ${Rs(Number(rt),p)}`).replace(P4,(K,rt,Se)=>{let at=H4(s,rt,w);return at?.label?Se===void 0?at.label:`${at.label}, ${Rs(Number(Se),at)}`:K}),q=`is ${y?Rs(f,p):i}; allowed: ${v}.`;return{path:l,words:`${d} ${q}`,brief:`${u} ${q}`}}var Xf=g`
  .controls {
    display: grid; grid-template-columns: repeat(auto-fill, minmax(190px, 1fr)); gap: 6px 14px; align-items: start;
  }
  .controls > .across { grid-column: 1 / -1; min-width: 0; }
  .control { min-width: 0; }
  .control .hint { margin: -2px 0 4px; }
  .row {
    padding: 6px 0; border-top: 1px solid var(--line); grid-template-columns: repeat(auto-fit, minmax(110px, 1fr));
  }
  .row > .across { grid-column: auto; }
  .row > .remove { margin-top: 1.2rem; }
  .row button, .table button { font-size: 0.85rem; }
  .part { padding: 8px 0 4px 12px; border-left: 3px solid var(--line); }
  .tools { display: flex; flex-wrap: wrap; gap: 6px; margin-top: 4px; }
  @media (max-width: 480px) {
    .controls { grid-template-columns: repeat(2, minmax(0, 1fr)); }
    .row > .across { grid-column: 1 / -1; }
  }
`,Jf=new Set(["list","map","part"]),F4=100,Zf=s=>Jf.has(s.type)||s.type==="text"&&!s.table&&s.longest>F4,Fe=(s,e,t,n)=>{let i=s.faultAt(e);return o`<div class=${Zf(t)?"control across":"control"} data-place=${Me(e)}>
    ${n}
    ${t.hint&&!Jf.has(t.type)?o`<span class="hint">${t.hint}</span>`:h}
    ${i?o`<p class="error">${i}</p>`:h}
  </div>`},jd=({vocabulary:s},e,t,n,i)=>{let r=s.fieldOf(e).type==="text"?"":null;return o`<div @jw-change=${l=>{l.stopPropagation(),n(Object.values(l.detail.changes)[0])}}>${C(s,e,t??r,i)}</div>`},Sd=(s,e,t,n,i)=>jd(s,e,n,i,Df(t,n,s.vocabulary.labelOf(e)??""));function Vf(s,{label:e,required:t=!1,table:n},i,r,a){let l=Me(r),d=s.entriesOf(String(n)),u=!i||d.some(p=>p.id===i);return o`<label class="label" for=${l}>${e}</label>
    <select id=${l} @change=${({target:p})=>a(p.value)}>
      <option value="" .selected=${!i} ?disabled=${t}>${t?"choose…":"not given"}</option>
      ${d.map(p=>o`<option value=${p.id} .selected=${p.id===i}>${p.name}</option>`)}
      ${u?h:o`<option value=${i} selected>${i}</option>`}
    </select>`}function U4(s,{label:e,hint:t,of:n,most:i=1/0},r){let a=He(s.document,r),l=Array.isArray(a)?a:[];return o`<div class="table" role="group" aria-label=${e}>
    <h4>${e} <small>${t}</small></h4>
    ${l.map((d,u)=>o`<div class="row controls" role="group" aria-label="${e} ${u+1}">
        ${Qf(s,n.of).map(p=>Ed(s,n.of,p,[...r,u,p]))}
        <button type="button" class="remove" @click=${()=>s.putField([...r,u],void 0)}>Remove <span
          class="unseen">${e} ${u+1}</span></button>
      </div>`)}
    <div class="tools">
      <button type="button" ?disabled=${l.length>=i} @click=${()=>s.addRow(r,n.of)}>Add a row <span
        class="unseen">to ${e}</span></button>
      ${l.length>1?o`<button type="button" @click=${()=>s.putField(r,[])}>Remove all rows <span class="unseen">of
            ${e}</span></button>`:h}
    </div>
  </div>`}function Yf(s,{hint:e,of:t},n,i){let r=(He(s.document,n)??null)!==null;return o`<div class="part" role="group" aria-label=${i}>
    <h4>${i} <small>${e}</small></h4>
    ${r?ns(s,t.of??t,n):h}
    <div class="tools">
      ${r?o`<button type="button" @click=${()=>s.putField(n,void 0)}>Leave out <span
            class="unseen">${i}</span></button>`:o`<button type="button" @click=${()=>s.addPart(n,t.of??t)}>Add <span
            class="unseen">${i}</span></button>`}
    </div>
  </div>`}function Ed(s,e,t,n){let i=s.shapes[e][t],r=He(s.document,n),a=u=>s.putField(n,u),l=u=>s.putFigure(n,u===""?null:u),d=`${e}.${t}`;switch(i.type){case"interval":return Object.keys(es).map(u=>{let p=[...n,u],f=r?.[u]?.value,y=Sd(s,`${d}-${u}`,i,f,w=>s.putFigure(p,w));return Fe(s,p,i,y)});case"quantity":return Fe(s,n,i,Sd(s,d,i,r?.value,l));case"number":return Fe(s,n,i,Sd(s,d,i,r,u=>a(u??void 0)));case"label":return Fe(s,n,i,i.table?Vf(s,i,r?.value,n,l):jd(s,d,r?.value,l));case"part":return i.required?Object.keys(s.shapes[i.of]).flatMap(u=>Ed(s,i.of,u,[...n,u])):Fe(s,n,i,Yf(s,i,n,String(i.label)));case"map":return i.keys.map(u=>Fe(s,[...n,u],i,Yf(s,i,[...n,u],`${i.label} ${u}`)));case"list":return i.of.type==="part"?Fe(s,n,i,U4(s,i,n)):Fe(s,n,i,Sf({label:String(i.label),hint:i.hint,chosen:r??[],put:a,offered:i.table?s.entriesOf(i.table):void 0,longest:i.of.longest}));default:return i.table?Fe(s,n,i,Vf(s,i,r,n,u=>a(u||void 0))):Fe(s,n,i,jd(s,d,r??i.default,u=>a(u??void 0)))}}var Qf=(s,e)=>Object.keys(s.shapes[e]).filter(t=>!Nn.has(t));function ns(s,e,t,n){let i=Qf(s,e).filter(d=>n===void 0||(s.shapes[e][d].group??"")===n),[r,a]=[!1,!0].map(d=>i.filter(u=>Zf(s.shapes[e][u])===d)),l=[...r,...a].map(d=>Ed(s,e,d,[...t,d]));return o`<div class="controls">${l}</div>`}var{shapes:Q,groups:e1,kinds:Od,most_bytes:Td}=z.pack,Pr={interfaces:z.families,cables:z.cables,wire_lines:z.wire_lines,bands:z.bands,modes:z.modes};var D4=[],Ad=Ms(Q),qd="adapters",Md=class extends b({transport:m(c),document:m(c),families:m(c),_table:$(c),_model:$(c),_name:$(c),_replaces:$(c),_problem:$(c)}){static styles=[_,g`
      :host { padding: 10px 12px; background: var(--sunk); border-radius: var(--round); }
      div[role='group'] {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(190px, 1fr)); gap: 8px 14px; align-items: end;
      }
      label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
    `];constructor(){super(),this._table=Ad[0].table,this._empty()}_empty(){this._model="",this._name="",this._replaces=!1,this._problem=""}get _isCopy(){return this._table in Pr}get _needsModel(){return this._isCopy||this._table===qd}get _modelLabel(){return this._isCopy?"A copy of":"One end"}render(){return o`<div role="group" aria-label="Add to the pack">
        ${this._choice("what","What to add",Ad.map(({table:e,label:t})=>[e,t]),this._table,e=>{this._empty(),this._table=e})}
        ${this._needsModel?this._models():h} ${this._isCopy?this._naming():h}
        <button type="button" id="add" @click=${this._add}>Add</button>
      </div>
      <p class="error" role="alert">${this._problem}</p>`}_choice(e,t,n,i,r){return o`<div><label for=${e}>${t}</label>
      <select id=${e} @change=${({target:a})=>r(a.value)}>
        ${n.map(([a,l])=>o`<option value=${a} .selected=${a===i}>${l}</option>`)}
      </select></div>`}_models(){let e=this._isCopy?Pr[this._table]:this.families,t=[["","choose…"],...e.map(({id:n,name:i})=>[n,i])];return this._choice("model",this._modelLabel,t,this._model,n=>this._model=n)}_naming(){let e=[["no","stands beside the built-in one"],["yes","takes its place"]];return o`<div><label for="new-name">Its name</label>
        <input id="new-name" type="text" autocomplete="off" maxlength="80" .value=${this._name}
          @input=${({target:t})=>this._name=t.value}></div>
      ${this._choice("replaces","It",e,this._replaces?"yes":"no",this._place)}`}_place=e=>{this._replaces=e==="yes"};async _add(){if(this._problem="",this._needsModel&&this._model===""){this._problem=`${this._modelLabel} is empty; allowed: one of the list.`;return}try{let e=await this._newEntry();if((this.document[this._table]??[]).some(({id:n})=>n===e.entry.id)){let n=i=>this.families.find(({id:r})=>r===i)?.name??i;this._problem=`${zs(e.entry,n)} is in the pack already.`;return}x(this,"jw-add",{table:this._table,...e}),this._empty()}catch(e){this._problem=e.message}}async _newEntry(){let{_table:e,_model:t,_name:n,_replaces:i}=this;if(e===qd)return this._adapters(t);if(!this._isCopy){let{part:d}=Ad.find(u=>u.table===e);return{entry:Cf(Q,this.document,e,d),replaces:!1}}let r=await this._copied(e,t);if(i)return{entry:{...r,name:n.trim()||r.name},replaces:i};let a=n.trim()||`${r.name}, own`,l=[...Pr[e],...this.document[e]??[]].map(({id:d})=>d);return{entry:{...r,id:Ln(a,l),name:a},replaces:i}}async _copied(e,t){let n={interfaces:{entry:t},cables:{cable:t}}[e]??{},i=await this._catalogue(n);return{interfaces:i.entry,cables:i.cable}[e]??i[e].find(r=>r.id===t)}async _adapters(e){let{adapters:t}=await this._catalogue({}),n=t.find(({id:r})=>r===e);if(n)return{entry:n,replaces:!0};let i={source:Pn(qd,e),kind:"datasheet"};return{entry:{...ts(Q,"Adapter"),id:e,...i},replaces:!1}}_catalogue(e){return this.transport.ask("catalogue",e,{packs:D4})}};customElements.define("jw-pack-add",Md);var G4="jw-number-field, jw-list-field, jw-text-field, jw-choice-field, jw-switch-field, select, input, button";function t1(s){if(!s)return;for(let n=s.closest("details");n;n=n.parentElement?.closest("details")??null)n.open=!0;let e=s.querySelector(G4),t=e?.shadowRoot?.querySelector('input[type="text"], input, select')??e;s.scrollIntoView({block:"center"}),t?.focus({preventScroll:!0})}var K4=Ms(Q),V4={interfaces:"families",cables:"cables",wire_lines:"wire_lines",bands:"bands",modes:"modes"},zd=(s,e)=>Object.fromEntries(Object.entries(Q[s]).filter(([t])=>e(t))),Y4={...Q,Pack:zd("Pack",s=>["name","version","note"].includes(s))},X4={...Q,PackSource:zd("PackSource",s=>s==="title")},J4={...Q,PackSource:zd("PackSource",s=>s!=="title")},Cd=6,Rd=class extends b({transport:m(c),taken:m(c),_history:$(c),_faults:$(c),_said:$(c),_kinds:$(c)}){static styles=[_,ue,T,kf,Xf,g`
      label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      h3 { margin: 16px 0 6px; }
      h4 { margin: 4px 0; font-size: 0.85rem; }
      h4 small { font-weight: 400; color: var(--soft); }
      .bar { display: flex; flex-wrap: wrap; gap: 8px; margin-top: 14px; }
      .entry { padding: 4px 12px 12px; margin-top: 8px; border: 1px solid var(--line); border-radius: var(--round); }
      .entry:not([open]) { padding-bottom: 4px; }
      .entry > summary { overflow-wrap: anywhere; }
      .entry > summary small { padding-left: 6px; }
      .entry > .quiet { margin: 2px 0 8px; }
      .faults { padding-left: 0; list-style: none; }
      .faults button {
        min-height: 32px; padding: 2px 8px; text-align: left; color: var(--alarm); border-color: var(--alarm);
        font-size: 0.85rem;
      }
      .faults { display: grid; gap: 4px; }
    `];constructor(){super(),this._vocabulary=new xe(this,{context:Zs,subscribe:!0}),this.taken=[],this._history=xf(Cr),this._begin(Cr)}_begin(e){this._history=xd(this._history,e),this._faults=[],this._said="",this._kinds={}}async open(e){this._begin(Bf(e)),await this.updateComplete;let t=this.renderRoot.querySelector("details");t.open=!0,t.querySelector("summary")?.focus(),t.scrollIntoView({block:"start"})}refuse(e){this._faults=[Kf(Q,this._document,e,this._nameOf)]}accept(){this._said=`${this._document.name} is in force.`}get _document(){return this._history.present}get _lists(){return this._vocabulary.value.lists}get _desk(){return{shapes:Q,document:this._document,vocabulary:this._vocabulary.value,entriesOf:e=>this._entriesOf(e),faultAt:e=>this._faults.find(t=>!t.isTold&&Me(t.path)===Me(e))?.brief??"",putFigure:(e,t)=>this._change(e,Lf(this._document,e,t,this._kindOf(e))),putField:(e,t)=>this._change(e,Pf(this._document,e,t,this._kindOf(e))),addRow:(e,t)=>this._change(e,Wf(Q,this._document,e,t,this._kindOf(e))),addPart:(e,t)=>this._change(e,If(Q,this._document,e,t,this._kindOf(e)))}}_entriesOf(e){let t=(this._document[e]??[]).map(({id:i,name:r})=>({id:i,name:r||i})),n=new Set(t.map(({id:i})=>i));return[...(this._lists[V4[e]]??[]).filter(({id:i})=>!n.has(i)),...t]}_nameOf=e=>this._entriesOf("interfaces").find(({id:t})=>t===e)?.name??e;_kindOf([e,t]){let n=this._document[e]?.[t];return n?.id===void 0?Od[0]:this._kinds[`${e}/${n.id}`]??zf(this._document,[e,t])}_change(e,t){this._faults=this._faults.filter(n=>!Me(n.path).startsWith(Me(e))),this._said="",this._history=xd(this._history,t)}render(){let{past:e,future:t}=this._history,n=this._desk,{name:i="",default_powers_w:r=[]}=n.document;return o`<details class="panel">
      <summary>Make a pack <small>connectors, cables, adapters, bands, modes and limits of your own</small></summary>
      <div class="bar">
        <button type="button" id="undo" ?disabled=${e.length===0} @click=${()=>this._step($f)}>Undo</button>
        <button type="button" id="redo" ?disabled=${t.length===0}
          @click=${()=>this._step(vf)}>Redo</button>
        <button type="button" @click=${this._restart}>Start again</button>
      </div>
      <form novalidate @submit=${this._made}>
        <h3>The pack${i?o` “${i}”`:h}</h3>
        ${ns({...n,shapes:Y4},"Pack",[])}
        <div @jw-change=${a=>this._powers(a)}>
          <jw-list-field name="Pack.default_powers_w" zero="receive" .value=${r}></jw-list-field>
        </div>
        ${K4.map(({table:a,part:l,label:d})=>yf(n.document[a]??[],({id:u})=>`${a}/${u}`,(u,p)=>this._entry(n,{table:a,part:l,label:d},u,p)))}
        <h3>Add to it</h3>
        <jw-pack-add .transport=${this.transport} .document=${n.document}
          .families=${this._entriesOf("interfaces")} @jw-add=${this._add}></jw-pack-add>
        <div role="alert">
          ${this._faultsTold()}
        </div>
        <p class="quiet" role="status">${this._said}</p>
        <div class="bar">
          <button id="take">Put it in force</button>
          <button type="button" id="save-draft" @click=${this._save}>Save as file</button>
        </div>
      </form>
    </details>`}_entry(e,{table:t,part:n,label:i},r,a){let l=[t,a],d=ss(e.document,l),u=e.document.sources.findIndex(({id:v})=>v===d),p=v=>Object.values(Q[n]).some(S=>S.group===v),f=zs(r,this._nameOf),y=e.document.overrides?.[t]?.includes(r.id),w=`${i.toLowerCase()}${y?", in place of the built-in one":""}`;return o`<details class="entry" open role="group" aria-label="${i} ${f}"
      data-entry="${t}/${r.id}">
      <summary>${f} <small>${w}</small></summary>
      ${ns(e,n,l,"")}
      ${u===-1?h:ns({...e,shapes:X4},"PackSource",["sources",u])}
      <p class="quiet">A figure that you change has this source; the others keep theirs.</p>
      ${e1.filter(p).map(v=>o`<details class="group"><summary>${v}</summary>${ns(e,n,l,v)}</details>`)}
      <details class="group">
        <summary>More on the source <small>${this._kindOf(l)}</small></summary>
        <div class="controls">
          <div class="control">
            <label for="kind-${Me(l)}">Your figures are</label>
            <select id="kind-${Me(l)}" @change=${({target:v})=>this._setKind(l,v.value)}>
              ${Od.map(v=>o`<option .selected=${v===this._kindOf(l)}>${v}</option>`)}
            </select>
          </div>
        </div>
        ${u===-1?h:ns({...e,shapes:J4},"PackSource",["sources",u])}
      </details>
      <div class="tools">
        <button type="button" @click=${()=>this._drop(t,a,f)}>Remove <span
          class="unseen">${f}</span> from the pack</button>
      </div>
    </details>`}async _add({detail:{table:e,entry:t,replaces:n}}){let i=(this._document[e]??[]).length,r=[e,i];this._change(r,Cs(qf(this._document,e,t,n),r)),this._said=`${zs(t,this._nameOf)} is in the pack.`;for(let a of this.renderRoot.querySelectorAll("details.entry"))a.removeAttribute("open");await this.updateComplete,this._show(r)}_drop(e,t,n){this._change([e],Mf(this._document,e,t)),this._said=`${n} is removed; Undo brings it back.`}_setKind(e,t){let[n,i]=e;this._kinds={...this._kinds,[`${n}/${this._document[n][i].id}`]:t},this._change([],Nf(this._document,e,t))}_powers(e){e.stopPropagation(),this._change(["default_powers_w"],ye(this._document,["default_powers_w"],e.detail.changes["Pack.default_powers_w"]))}_step(e){this._history=e(this._history),this._faults=[],this._said=""}_restart(){this._begin(Cr)}_faultsTold(){let{_faults:e}=this;return e.length===0?h:o`<ul class="faults">${e.slice(0,Cd).map(({path:t,words:n})=>o`<li>${t.length>0?o`<button type="button" @click=${()=>this._show(t)}>${n}</button>`:o`<p class="error">${n}</p>`}</li>`)}
    ${e.length>Cd?o`<li class="error">and ${e.length-Cd} more.</li>`:h}</ul>`}_show(e){let[t,n]=e,{id:i}=this._document[t]?.[n]??{},{renderRoot:r}=this,a=r.querySelector(`[data-place="${Me(e)}"]`);t1(a??r.querySelector(`[data-entry="${t}/${i}"]`))}_isWhole(){let t=[...this.renderRoot.querySelectorAll("jw-number-field, jw-list-field")].map(i=>i).filter(({problem:i,error:r})=>i&&!r),n=i=>(i.closest("[data-place]")?.dataset.place??"").split("-").filter(Boolean);return this._faults=[...t.map(i=>({path:n(i),words:i.problem,isTold:!0})),...Gf(Q,this._document,this._nameOf)],this._faults.length===0}_named(){let e=this._document;return e.id===""&&this._change([],{...e,id:Ln(e.name,this.taken)}),this._document}_made(e){if(e.preventDefault(),!this._isWhole())return;let t=this._named();x(this,"jw-pack-made",{text:vd(t),label:t.name})}_save(){if(!this._isWhole())return;let e=this._named();H(`${e.id}.json`,"application/json",vd(e))}};customElements.define("jw-pack-form",Rd);var Z4={interfaces:"connector",cables:"cable",wire_lines:"two-wire line",adapters:"adapter",matings:"mating",bands:"band",modes:"mode",house_limits:"house limit",default_powers_w:"default powers"},Q4=s=>s.replaceAll("_"," ").replaceAll("."," ");function Nd(s){let e=new Map;for(let t of s){let[,n,i="",r=""]=/^([^/]+)(?:\/([^.]+)(?:\.(.+))?)?$/.exec(t)??[],a=`${Z4[n]} ${i}`.trim();e.set(a,[...e.get(a)??[],...r?[Q4(r)]:[]])}return[...e].map(([t,n])=>n.length>0?`${t} (${n.join(", ")})`:t).join("; ")}var Wn="packs",In=class extends b({transport:m(c),stage:{type:String},shelf:m(c),version:{type:Number},_over:$(c),_refused:$(c),_said:$(c),_busy:$(c)},$e){static view=Wn;static styles=[_,Ne,T,J,g`
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
    `];constructor(){super(),this.stage="",this._said="",this._busy=!1,this._catalogue=new ie(this,(e,t)=>this.transport.ask("catalogue",e,t))}updated(e){this.transport===void 0||this.shelf===void 0||(e.has("version")||e.has("transport"))&&this._catalogue.ask({})}render(){let{_refused:e}=this,t=this._busy?"pending":this._catalogue.status;return o`<jw-progress status=${t} stage=${this.stage===ut?"":this.stage}></jw-progress>
      <main>
        <jw-undo ?undo=${this.stationStore.canUndo(Wn)} ?redo=${this.stationStore.canRedo(Wn)}
          @jw-turn=${({detail:n})=>this.turn(n.way)}></jw-undo>
        <section class="panel">
          <h2>Packs</h2>
          <p>A pack holds entries of your own: connectors, cables, adapters, bands, modes, default powers, and the
            limits your station sets itself. It stays in this browser. What comes from one is marked “from pack”
            wherever it shows; no formula is ever changed.</p>
          <div class="drop" ?data-over=${this._over} @dragover=${this._dragged} @dragleave=${()=>this._over=!1}
            @drop=${this._dropped}>
            <label for="file">Drop a pack file here, or choose one</label>
            <input id="file" type="file" accept=".json,application/json" @change=${this._picked}>
          </div>
          ${e?o`<p class="trouble" role="alert" id="refused">Nothing was changed. <b>${e}</b></p>`:h}
          <p class="quiet" role="status" id="said">${this._said}</p>
        </section>
        <section class="panel"><h2>On this page</h2>${this._list()}</section>
        <jw-pack-form .transport=${this.transport} .taken=${[...this.shelf?.server??[],...this.shelf?.own??[]].map(({id:n})=>n)} @jw-pack-made=${this._made}></jw-pack-form>
      </main>`}_list(){let{server:e=[],own:t=[]}=this.shelf??{};return e.length+t.length===0?o`<p class="quiet">None: everything shown is built in.</p>`:o`<ul>${e.map(n=>this._pack(n,!0))}${t.map(n=>this._pack(n,!1))}</ul>`}_pack(e,t){let n=t||e.on,i=this._catalogue.result?.packs.find(({id:r})=>r===e.id);return o`<li data-pack=${e.id} ?data-off=${!n}>
      <header>
        <h3>${e.name}</h3>
        ${t?o`<span class="quiet">of the server</span>`:o`<button class="turn" aria-pressed=${n} @click=${()=>this._turn(e)}>In force</button>
              <button class="change" aria-label="Change ${e.name} in the form"
                @click=${()=>this._open(e,i)}>Change</button>`}
        <button class="save" aria-label="Save ${e.name} as a file"
          @click=${()=>H(`${e.id}.json`,"application/json",e.text)}>Save as file</button>
        ${t?h:o`<button class="remove" aria-label="Remove ${e.name}"
              @click=${()=>this._remove(e)}>Remove</button>`}
      </header>
      ${e.refused?o`<p class="error">Turned off: ${e.refused}</p>`:h}
      ${n&&i?this._told(i):h}
    </li>`}_told({version:e,note:t,added:n,changed:i,taken:r}){return o`<p class="quiet">Version ${e}${t?o`. ${t}`:h}</p>
      ${n.length>0?o`<p>Adds ${Nd(n)}.</p>`:h}
      ${i.length>0?o`<p>Changes ${Nd(i)}.</p>`:h}
      ${r.map(a=>o`<p class="taken">${a}</p>`)}`}_dragged(e){e.preventDefault(),this._over=!0}_dropped(e){e.preventDefault(),this._over=!1,this._read(e.dataTransfer.files[0])}async _picked({target:e}){await this._read(e.files[0]),e.value=""}async _read(e){if(e){if(e.size>Td){this._refuse(`${e.name} is ${e.size} bytes long; allowed: up to ${Td}.`);return}await this._take(await e.text(),e.name)}}async _tried(e,t){this._refused=void 0,this._busy=!0,this._said="The core is looking at the pack…";try{await this.transport.ask("catalogue",{},{packs:this.shelf.with(e,t)}),this._change(()=>this.shelf.put(e)),this._said=`${t} is in force.`;return}catch(n){return n}finally{this._busy=!1}}async _take(e,t){let n=await this._tried(e,t);n&&this._refuse(n.message)}async _made({detail:{text:e,label:t}}){let n=await this._tried(e,t);if(!n)return this._form.accept();this._said="",this._form.refuse(n)}get _form(){return this.renderRoot.querySelector("jw-pack-form")}_open(e,t){return this._form.open(t?.today||e.text)}_change(e){let t=this.shelf.own;e(),this.stationStore.change(Wn,{},{before:t,after:this.shelf.own})}turn(e){let t=this.stationStore.turn(e,Wn);return t?.own&&this.shelf.bringBack(t.own.from,t.own.to),t&&(this._said=e==="undo"?"Undone.":"Done again."),this._refused=void 0,t!==void 0}_refuse(e){this._refused=e,this._said=""}_turn(e){if(!e.on)return this._take(e.text,e.name);this._refused=void 0,this._change(()=>this.shelf.turn(e,!1)),this._said=`${e.name} is off.`}_remove(e){this._refused=void 0,this._change(()=>this.shelf.remove(e)),this._said=`${e.name} is removed.`}};customElements.define("jw-packs-view",In);var s1={id:In.view,label:"Packs",fields:()=>Of(Q),words:()=>Tf(Q),element:({transport:s,stage:e,shelf:t,version:n})=>o`<jw-packs-view class="view" .transport=${s} .stage=${e} .shelf=${t}
      .version=${n}></jw-packs-view>`};var e3=["short","open","matched","antenna"],n1=({requests:{span:s,sweep:e}})=>({sweep:{length_tolerance:e.length_tolerance,window_shape:e.window_shape,length_m:s.length_m,velocity_factor:s.velocity_factor,lowest_hz:s.lowest_hz,highest_hz:s.highest_hz,most_points:s.most_points,of:{type:"text",longest:20,default:"line",nullable:!1},end:{type:"choice",choices:e3,default:"short",nullable:!1},way:{type:"choice",choices:["judge","hunt"],default:"judge",nullable:!1}}});var i1=200,r1={format:"jointwise sweeps",version:1,key:"sweeps"},a1={line:60,name:200,verdict:2e3,text:8e6},t3=/^\d{4}-\d{2}-\d{2}$/;function o1({date:s,line:e,file:t,result:n}){let i=(n.line?.joints??[]).map(({element:r,name:a,excess:l})=>({element:r,name:a,excess:l}));return{date:s,line:e,ports:n.ports,name:t.name,text:t.text,verdict:n.verdict,joints:i,resistance_ohm:n.part?.resistance_ohm??null}}var Wr=({line:s,date:e,name:t})=>JSON.stringify([s,e,t]),Ld=s=>[...s].sort((e,t)=>e.date.localeCompare(t.date)).slice(-i1);function Pd(s,e){return Ld([...s.filter(t=>Wr(t)!==Wr(e)),e])}function l1(s,e){let t=s.filter(l=>l.line===e),n=t.filter(({ports:l})=>l===2);if(n.length>1)return{title:"resistance, Ω",series:[{name:"in series",dates:n.map(({date:l})=>l),values:n.map(({resistance_ohm:l})=>l)}]};let i=t.filter(({ports:l})=>l===1);return i.length<2?void 0:{title:"excess reflection",series:[...new Map(i.flatMap(l=>l.joints.map(({element:d,name:u})=>[d,u])))].map(([l,d])=>({name:`${l+1} · ${d}`,dates:i.map(({date:u})=>u),values:i.map(u=>u.joints.find(p=>p.element===l)?.excess??null)}))}}var d1=(s,e)=>{e!==null&&!Number.isFinite(e)&&F(s,e,"a number or null")};function s3(s,e){let{element:t,name:n,excess:i}=D(s,e);return(!Number.isInteger(t)||t<0||t>59)&&F(`${s}.element`,t,"a whole number from 0 to 59"),ae(`${s}.name`,n,a1.line),d1(`${s}.excess`,i),{element:t,name:n,excess:i}}function Wd(s){return re("sweeps",s,0,i1,"sweeps").map((e,t)=>{let n=`sweeps[${t}]`,{date:i,ports:r,joints:a,resistance_ohm:l,...d}=D(n,e);(typeof i!="string"||!t3.test(i)||Number.isNaN(Date.parse(i)))&&F(`${n}.date`,i,"a day as 2026-11-25"),r!==1&&r!==2&&F(`${n}.ports`,r,"1 or 2");for(let[p,f]of Object.entries(a1))ae(`${n}.${p}`,d[p],f);d1(`${n}.resistance_ohm`,l);let u=re(`${n}.joints`,a,0,60,"joints").map((p,f)=>s3(`${n}.joints[${f}]`,p));return{date:i,line:d.line,ports:r,name:d.name,text:d.text,verdict:d.verdict,joints:u,resistance_ohm:l}})}var c1=s=>mr(r1,s),u1=s=>pr(r1,s,Wd);var n3={sound:{mark:"✓",words:"Nothing found"},suspect:{mark:"!",words:"Bad joint"},damage:{mark:"!",words:"Damaged cable"},unclear:{mark:"?",words:"One of several places"},"cannot tell":{mark:"?",words:"Can’t tell"},"no fit":{mark:"≠",words:"Another line"},passed:{mark:"✓",words:"Passed"},failed:{mark:"!",words:"Failed"}},i3={mark:"∿",words:"Echoes by distance"},h1=({line:s,part:e})=>n3[(s??e)?.finding??""]??i3,m1={bad:"!",possible:"?",behind:"…",hidden:"–",sound:"✓"},p1=({joints:s,cables:e})=>[...s.map(t=>({...t,place:`at ${L(t.distance_m)}`})),...e.map(t=>({...t,place:`${gt(t.from_m,"m",3)} to ${L(t.to_m)}`}))].sort((t,n)=>t.element-n.element),$t=(s,{faults:e,apart:t})=>t.includes(s)||e.some(n=>n.element===s);function Ns({field:s,message:e,value:t,allowed:n},i){if(s!=="touchstone"&&s!=="earlier")return e;let[,r,a]=/^on line (\d+), (.*)$/s.exec(n)??[];return r?`${i} can’t be read: line ${r} is ${t}. What can stand there: ${a}.`:`${i} can’t be used: found ${String(t).replaceAll('"',"")}, needed ${n}.`}var L=s=>be(s,3),f1=({name:s,unit:e,value:t,low:n,high:i})=>`${s} ${X(t,e,3)} (${X(n,e,3)} to ${X(i,e,3)})`,me=s=>s===null?"–":k(s,2),g1=({least_resistance_ohm:s})=>s===null?"–":P(s,"Ω",2),vt=s=>`${k(s*100,2)} %`;function b1({evidence:s}){let e=s/Math.LN10;return e<3?`${k(Math.exp(s),2)} to 1`:`10^${Math.floor(e)} to 1`}var Id=s=>Math.max(0,...s.filter(e=>e!==null));function Bd(s,e,t){let n=s.distance_m.flatMap((a,l)=>Math.abs(a-e)<=t/2?[l]:[]);n.length===0&&n.push(d3(s.distance_m,e));let i=Ir(s),r=a=>Id(n.map(l=>o3(a[l]??null)));return{measured:r(s.measured),earlier:r(s.earlier),excess:Id(n.map(a=>l3(s,a))),change:Id(n.map(a=>i[a])),threshold:r(s.threshold)}}function _1(s,e){let{profile:t,range_m:n,resolution_m:i}=s,r=t.distance_m[t.distance_m.length-1];if(e>n)return{echo:`This sweep sees no farther than ${L(n)}: take more points, or less span.`,part:""};if(e>r)return{echo:`That is beyond the end of the chart, ${L(r)}.`,part:""};let{measured:a,excess:l,threshold:d}=Bd(t,e,i),u=l>d,p=`${me(a)} of the wave comes back from there`;return{echo:u?`${p}, ${"joints"in s?"more than a good line shows":"more than noise makes"}.`:`${p}: nothing that stands out.`,part:"joints"in s?r3(s,e):a3(s,e)}}function r3({joints:s,cables:e,resolution_m:t},n){let i=s.find(u=>Math.abs(u.distance_m-n)<=t/2);if(i)return`That is ${i.name}, at ${L(i.distance_m)}: ${i.words}.`;let r=e.find(({from_m:u,to_m:p})=>u<=n&&n<=p);if(!r)return"That is beyond the end of the line.";let a=s.filter(u=>u.distance_m<=n).at(-1),l=s.find(u=>u.distance_m>n),d=[a&&`${L(n-a.distance_m)} after ${a.name}`,l&&`${L(l.distance_m-n)} before ${l.name}`].filter(Boolean);return`That is in ${r.name}, ${d.join(" and ")}: ${r.words}.`}function a3({echoes:s,resolution_m:e},t){if(s.length===0)return"No echo stands out in this sweep.";let[n]=s.toSorted((a,l)=>Math.abs(a.distance_m-t)-Math.abs(l.distance_m-t)),i=Math.abs(n.distance_m-t),r=`at ${L(n.distance_m)} (${L(n.low_m)} to ${L(n.high_m)})`;return i<=e?`The echo ${r}: ${n.words}`:`The nearest echo is ${r}, ${L(i)} away: ${n.words}`}var Ir=({measured:s,earlier:e})=>s.map((t,n)=>Math.abs((t??0)-(e[n]??t??0))),o3=s=>s===null?null:Math.abs(s),l3=({measured:s,expected:e},t)=>s[t]===null?null:Math.abs(s[t]-(e[t]??0)),d3=(s,e)=>s.reduce((t,n,i)=>Math.abs(n-e)<Math.abs(s[t]-e)?i:t,0);function is({line:s,echoes:e}){if(e)return e.echoes.slice(0,-1).map(({distance_m:i})=>({element:null,name:L(i),distance_m:i}));if(!s)return[];let t=s.faults.map(({element:i,part:r,distance_m:a})=>({element:i,name:r,distance_m:a}));if(t.length>0)return t;let n=[...s.joints.map(({element:i,name:r,distance_m:a})=>({element:i,name:r,distance_m:a})),...s.cables.map(({element:i,name:r,from_m:a,to_m:l})=>({element:i,name:r,distance_m:(a+l)/2}))];return s.apart.flatMap(i=>n.find(r=>r.element===i)??[])}function w1(s,e){if(e.part)return e.part.trend?[e.part.trend.sentence]:["The second file is not of the same kind."];let t=e.line??e.echoes;if(!t)return[];let n=is(s);return n.length===0?[h3(t)]:[...n.map(i=>c3(i,t,e)),...u3(n,e)]}function c3(s,e,t){let{earlier:n,measured:i,change:r}=Bd(e.profile,s.distance_m,e.resolution_m),a=r>y1(e.profile),l=`the echo there went from ${me(n)} to ${me(i)}`,d=`${l}, no more than two sweeps of one line differ by`;return t.line&&["no fit","cannot tell"].includes(t.line.finding)?`${s.name}: ${l}, but the second sweep can’t be judged.`:t.line&&is(t).some(({element:u})=>u===s.element)?a?`${s.name} changed and still stands out: ${l}.`:`${s.name} is as it was: ${d}.`:t.line?`${s.name} no longer stands out: ${a?l:d}.`:a?`${s.name} got ${i>n?"worse":"better"}: ${l}.`:`${s.name} is as it was: ${d}.`}function u3(s,e){if(!e.line)return[];let t=is(e).filter(({element:n})=>s.every(i=>i.element!==n));return t.length>0?[`What stands out now: ${t.map(({name:n,distance_m:i})=>`${n} at ${L(i)}`).join(", ")}.`]:e.line.finding==="sound"?["Nothing else is found."]:[]}function h3({profile:s}){let e=Ir(s),t=e.indexOf(Math.max(...e)),n=`at ${L(Math.max(s.distance_m[t],0))}`;return e[t]>y1(s)?`The two sweeps differ most ${n}, by ${me(e[t])} of the wave.`:"Nothing changed beyond what two sweeps of one line differ by."}var m3=5,y1=s=>m3*p3(Ir(s)),p3=s=>s.toSorted((e,t)=>e-t)[Math.floor(s.length/2)]??0;var kt=[["line","Choose the line"],["safe","Make it safe"],["span","Set the analyser"],["calibrate","Calibrate"],["end","Short or open the far end"],["sweep","Sweep, and give the file"],["place","Go to the place"],["again","Sweep again"],["compare","Before and after"]],x1={at:kt[0][0]},$1=s=>kt[kt.findIndex(([e])=>e===s)+1]?.[0],v1=s=>["sweep","place","again","compare"].includes(s),Hd={of:20,name:200,text:8e6};function k1(s){let{of:e,at:t,file:n}=D("hunt",s);return kt.every(([i])=>i!==t)&&F("hunt.at",t,`one of ${kt.map(([i])=>i).join(", ")}`),ae("hunt.of",e,Hd.of),n!==null&&(ae("hunt.file.name",D("hunt.file",n).name,Hd.name),ae("hunt.file.text",n.text,Hd.text)),{of:e,at:t==="compare"?"again":t,file:n&&{name:n.name,text:n.text}}}var S1=["Transmitter off and locked out: unplug it from the line, and from the mains or take the key along, so that nobody can key it while you are at the line.","Short the line for a moment, inner to outer conductor, before the analyser touches it: it may hold static charge.","A thunderstorm near? Stop here."],Ud="Before your hands touch the line: transmitter off and locked out. Nobody keys while you are there. On a mast: harness, a second person, and no power line within reach.",j1={short:"A short sends current through every joint, so a contact that has gone bad shows: the best end for most hunts.",open:"At an open end no current flows: the last joint hides a bad contact. Good against water and crushed cable.",matched:"A matched load keeps the end’s own echo small, so small echoes along the line show; it must be a good one.",antenna:"An antenna hides what is near it, and lets the least be told. Take it off if you can get at it."};function E1(s){let{line:e,part:t,echoes:n}=s;if(t){let d=t.finding==="failed"?"It is the part in your hand.":"The part in your hand keeps its limits.";return{places:[],work:t.finding==="failed"?Fd:[],why:d}}let i=is(s);if(n){let d=i.map(({name:p})=>`${p} from the analyser`),u=d.length>0?"An echo is no fault yet: a good joint sends one back too. Begin with the strongest, and leave the last, which is the end of the line.":"No echo stands out but the end of the line.";return{places:d,work:d.length>0?Fd:[],why:u}}let r=e?.faults??[],a=r.length>0?r.map(d=>`${d.part}, ${f3(d)} from the analyser`):i.map(({name:d,distance_m:u})=>`${d}, ${L(u)} from the analyser`),l=r.length>0&&r.every(({where:d})=>d==="cable");return{places:a,work:a.length===0?[]:l?b3:Fd,why:g3[e?.finding??""]}}var f3=({distance_m:s,low_m:e,high_m:t})=>t>e?`${L(e)} to ${L(t)}`:L(s),g3={suspect:"The sweep names this place.",damage:"The sweep puts it inside the cable.",unclear:"It is one of these; begin with the one you reach most easily.",sound:"The sweep finds nothing to go to.","cannot tell":"The sweep names no place yet. Do what the answer says, and sweep again.","no fit":"The sweep is of another line than described. Mend the description, or find out what ends the line."},Fd=["Wiggle it while somebody watches the analyser sweep: if the trace jumps, it is this one.","Open it. Look for water, green copper, a pin that stands back, cut braid, a collar that was never tight.","Clean, remake or exchange it, and seal it."],b3=["Follow the cable over that stretch, with a tape from the analyser on: crushed, bent tight, chafed, wet, nailed?","Bend it gently while somebody watches the analyser sweep: if the trace jumps, it is here.","Cut it out, or exchange the cable."];var Br=s=>s.map(e=>e/1e6),Hr=340,Ue=s=>le("m").shown(s),Dd=()=>`from the analyser, ${on("m")}`,ee=(s,e,t,n,i={})=>({type:"scatter",mode:"lines",x:s,y:e,name:t,line:n,connectgaps:!1,hovertemplate:`%{y:.3f} at %{x:.4g}<extra>${t}</extra>`,...i}),St=s=>({...s,showlegend:!0,legend:{orientation:"h",y:1.02,yanchor:"bottom",x:0},margin:{...s.margin,t:34}});function T1(s,e=Y){let{profile:t,joints:n,cables:i}=s,r=t.distance_m.map(Ue),a=St(he({x:Dd(),y:"reflection",colours:e,height:Hr}));return{data:[...C1(t,t.expected,e),ee(r,t.expected,"expected",{color:e.soft,width:1.5,dash:"dot"}),...R1(t,e),ee(r,t.measured,"measured",{color:e.band,width:2.5})],layout:{...a,yaxis:{...a.yaxis,range:x3(s),tickformat:s.transform==="low-pass"?"+.3~f":".3~f"},shapes:[...i.filter(l=>$t(l.element,s)).map(l=>$3(l,e)),...n.map(l=>v3(l,s,e))],annotations:n.map(l=>k3(l,s,e))},config:ce}}function A1({profile:s,echoes:e,transform:t},n=Y){let i=s.distance_m.map(Ue),r=St(he({x:Dd(),y:"reflection",colours:n,height:Hr}));return{data:[...C1(s,i.map(()=>0),n),...R1(s,n),ee(i,s.measured,"measured",{color:n.band,width:2.5})],layout:{...r,yaxis:{...r.yaxis,tickformat:t==="low-pass"?"+.3~f":".3~f"},shapes:e.map(({distance_m:a})=>Gd(a,{color:n.soft,width:1,dash:"dot"})),annotations:e.map(({distance_m:a})=>Kd(a,L(a),n.ink))},config:ce}}function q1({profile:s,places:e},t=Y){let n=s.distance_m.map(Ue),i=St(he({x:Dd(),y:"reflection",colours:t,height:Hr})),r=Math.max(w3(s),...e.map(a=>1.3*y3(s,a)));return{data:[ee(n,s.earlier,"before",{color:t.soft,width:2,dash:"dash"}),ee(n,s.measured,"after",{color:t.band,width:2.5})],layout:{...i,yaxis:{...i.yaxis,range:[M1(s)?-r:0,r],tickformat:".3~f"},shapes:e.map(({distance_m:a})=>Gd(a,{color:t.ink,width:2})),annotations:e.map(({name:a,distance_m:l})=>Kd(l,a,t.ink))},config:ce}}var _3=.04,O1=6;function w3({measured:s,earlier:e}){let t=[...s,...e].map(n=>Math.abs(n??0)).toSorted((n,i)=>n-i);return 1.6*Math.max(.01,t[Math.floor(t.length*(1-_3))]??0)}function y3({distance_m:s,measured:e,earlier:t},{distance_m:n}){let i=s.findIndex(a=>a>=n);if(i<0)return 0;let r=[e,t].flatMap(a=>a.slice(Math.max(i-O1,0),i+O1));return Math.max(...r.map(a=>Math.abs(a??0)))}var M1=({measured:s})=>s.some(e=>e<0);function C1({distance_m:s,threshold:e},t,n){let i=s.map(Ue),r=a=>t.map((l,d)=>l===null?null:l+a*e[d]);return[ee(i,r(-1),"below",{width:0},{showlegend:!1,hoverinfo:"skip"}),ee(i,r(1),"threshold",{width:0},{fill:"tonexty",fillcolor:Ts(n.band),hoverinfo:"skip"})]}var R1=({distance_m:s,earlier:e},t)=>e.length>0?[ee(s.map(Ue),e,"earlier",{color:t.soft,width:1.5,dash:"dash"})]:[];function x3({profile:s,joints:e}){let t=Math.max(.02,...e.flatMap((n,i)=>i===e.length-1?[n.excess,n.threshold]:[n.measured,n.expected,n.threshold]));return[M1(s)?-1.6*t:0,1.6*t]}var Gd=(s,e)=>({type:"line",layer:"below",yref:"paper",x0:Ue(s),x1:Ue(s),y0:0,y1:1,line:e}),Kd=(s,e,t)=>({x:Ue(s),yref:"paper",y:1,yanchor:"top",xanchor:"left",showarrow:!1,textangle:90,text:e,font:{size:11,color:t}}),$3=({from_m:s,to_m:e},t)=>({type:"rect",yref:"paper",x0:Ue(s),x1:Ue(e),y0:0,y1:1,line:{width:0},fillcolor:t.ink,opacity:.12}),v3=(s,e,t)=>Gd(s.distance_m,$t(s.element,e)?{color:t.ink,width:2.5}:{color:t.soft,width:1,dash:"dot"}),k3=(s,e,t)=>Kd(s.distance_m,`${$t(s.element,e)?"! ":""}${s.element+1} · ${s.name}`,$t(s.element,e)?t.ink:t.soft);function z1({curves:s},e=Y){let t=Br(s.frequency_hz),n=r=>r.map(a=>a===null?null:-a),i=St(he({x:"frequency, MHz",y:"return loss, dB",colours:e}));return{data:[ee(t,n(s.expected_db),"expected",{color:e.soft,width:1.5,dash:"dot"}),ee(t,n(s.measured_db),"measured",{color:e.band,width:1.5}),ee(t,n(s.fitted_db),"as fitted",{color:e.accent,width:1.5,dash:"dash"})],layout:{...i,yaxis:{...i.yaxis,autorange:"reversed"}},config:ce}}function S3(s,e){if(s===null||e===null)return[null,null];let t=(1-s)**2+e**2;return[(1-s**2-e**2)/t,2*e/t]}function N1(s,e,t=Y){let n=Br(e).map(i=>`${i.toPrecision(4)} MHz`);return{data:s.map(({name:i,real:r,imaginary:a,colour:l,dash:d})=>{let u=r.map((p,f)=>S3(p,a[f]));return{type:"scattersmith",mode:"lines",name:i,real:u.map(([p])=>p),imag:u.map(([,p])=>p),line:{color:t[l],width:1.5,dash:d},text:n,hovertemplate:`%{text}: %{real:.3g} %{imag:+.3g}j<extra>${i}</extra>`}}),layout:{...St(he({x:"",y:"",colours:t,height:Hr})),margin:{l:24,r:24,t:34,b:20},smith:{bgcolor:"rgba(0,0,0,0)",realaxis:{gridcolor:t.line,linecolor:t.soft,tickfont:{size:10},tickvals:[.2,.5,1,2,5]},imaginaryaxis:{gridcolor:t.line,linecolor:t.soft,tickfont:{size:10},tickvals:[-5,-2,-1,-.5,-.2,0,.2,.5,1,2,5]}}},config:ce}}var L1=({curves:s},e=Y)=>N1([{name:"measured",real:s.measured_real,imaginary:s.measured_imaginary,colour:"band",dash:"solid"},{name:"as fitted",real:s.fitted_real,imaginary:s.fitted_imaginary,colour:"accent",dash:"dash"}],s.frequency_hz,e),P1=(s,e=Y)=>N1([{name:"into port 1",real:s.measured_real,imaginary:s.measured_imaginary,colour:"band",dash:"solid"}],s.frequency_hz,e);function W1(s,e=Y){let t=Br(s.frequency_hz),n=St(he({x:"frequency, MHz",y:"loss, dB",colours:e}));return{data:[ee(t,s.expected_loss_db,"expected",{color:e.soft,width:1.5,dash:"dot"}),ee(t,s.limit_loss_db,"limit",{color:e.ink,width:1.5}),...s.earlier_loss_db.length>0?[ee(t,s.earlier_loss_db,"earlier",{color:e.soft,width:1.5,dash:"dash"})]:[],ee(t,s.loss_db,"measured",{color:e.band,width:2.5})],layout:n,config:ce}}function I1(s,e=Y){let t=Br(s.frequency_hz),n=St(he({x:"frequency, MHz",y:"return loss, dB",colours:e}));return{data:[ee(t,s.limit_return_loss_db,"limit",{color:e.ink,width:1.5}),ee(t,s.return_loss_db,"port 1",{color:e.band,width:2.5}),ee(t,s.other_return_loss_db,"port 2",{color:e.accent,width:1.5,dash:"dash"})],layout:{...n,yaxis:{...n.yaxis,autorange:"reversed"}},config:ce}}function B1({title:s,series:e},t=Y){let n=St(he({x:"",y:s,colours:t})),i=[t.band,t.accent,t.soft,t.ink];return{data:e.map(({name:r,dates:a,values:l},d)=>({type:"scatter",mode:"lines+markers",x:a,y:l,name:r,line:{color:i[d%i.length],width:2,dash:d<i.length?"solid":"dot"},marker:{size:8,symbol:d},hovertemplate:`%{y:.3g} on %{x}<extra>${r}</extra>`})),layout:{...n,xaxis:{...n.xaxis,type:"date",tickformat:"%Y-%m-%d",nticks:5},yaxis:{...n.yaxis,rangemode:"tozero"}},config:ce}}var Vd=class extends b({before:m(c),after:m(c),load:m(c)}){static styles=[_,T,g`
      li { margin-bottom: 2px; }
      ul { padding-left: 1.2em; margin-bottom: 8px; }
    `];willUpdate(){let{before:e,after:t}=this,n=t.line??t.echoes,i=n&&n.profile.earlier.length>0&&{profile:n.profile,places:is(e)};this._figure=i?r=>q1(i,r):void 0}render(){return o`<section class="panel" id="change"><h2>What changed</h2>
      <ul role="status">${w1(this.before,this.after).map(e=>o`<li>${e}</li>`)}</ul>
      ${this._figure?o`<jw-chart style="--chart:340px" .figure=${this._figure} .load=${this.load}
              label="Reflection against distance, before and after; the places first named are marked"></jw-chart>`:h}
    </section>`}};customElements.define("jw-sweep-change",Vd);var Yd=class extends b({check:m(c),_distance:$(c)}){static styles=[_,g`
      :host { margin-top: 8px; }
      label { font-size: 0.92rem; font-weight: 600; }
      input:not([type='checkbox']) { width: 6.5rem; margin: 0 4px; }
      p { margin-top: 4px; font-size: 0.92rem; }
      @media print { :host { display: none; } }
    `];constructor(){super(),this._distance=null}render(){let e=this._distance===null?void 0:_1(this.check,this._distance);return o`<label>What is at
        <input id="at" type="number" inputmode="decimal" min="0" step="any" placeholder="12"
          @input=${this._typed}> ${on("m")}?</label>
      <div role="status">${e?o`<p>${e.echo} ${e.part}</p>`:h}</div>`}_typed({target:{value:e,validity:t}}){this._distance=e===""||!t.valid?null:le("m").sent(Number(e))}};customElements.define("jw-sweep-place",Yd);var Xd=class extends b({check:m(c),load:m(c)}){static styles=[_,T,g`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; }
      ol { margin: 0; padding-left: 1.6em; font-size: 0.92rem; }
      li + li { margin-top: 4px; }
      @media print { :host { display: block; } .panel { margin-bottom: 2mm; } }
    `];willUpdate(e){if(!e.has("check"))return;let{check:t}=this;this._figure=n=>A1(t,n)}render(){let{check:e}=this;return o`<section class="panel" id="echoes"><h2>Echoes <small>from the analyser on</small></h2>
        <ol>${e.echoes.map(j3)}</ol></section>
      <section class="panel" id="distance"><h2>Echoes by distance</h2>
        <jw-chart style="--chart:340px" .figure=${this._figure} .load=${this.load}
          label="Reflection against distance, a mark at each echo"></jw-chart>
        <p class="quiet">
          Shaded: what noise may show. By a velocity factor of ${k(e.velocity_factor,3)}; a distance is wrong
          by as much as the factor is. Sees as far as ${L(e.range_m)}, and shows as one what is nearer than
          ${X(e.resolution_m,"m",2)}.
        </p>
        <jw-sweep-place .check=${e}></jw-sweep-place>
      </section>`}},j3=({distance_m:s,low_m:e,high_m:t,reflection:n,words:i})=>o`<li>
    <b>${L(s)}</b> (${L(e)} to ${L(t)}): ${i}
    <span class="quiet">${me(Math.abs(n))} of the wave</span>
  </li>`;customElements.define("jw-sweep-echoes",Xd);var E3=["load","receiver","explain","power_w","band","frequency_hz","transmitter"],H1=8e6,F1=s=>Object.fromEntries(Object.entries(s.request).filter(([e])=>!E3.includes(e))),O3=(s,e)=>s==="antenna"?e.request.load:{kind:"end",what:s};function U1({end:s,length_tolerance:e,window_shape:t,velocity_factor:n},i,r,a){let{elements:l}=i.request,d=l.length>0?{load:O3(s,i),length_tolerance:e}:{velocity_factor:n};return{...F1(i),...d,touchstone:r.text,...Ze({window_shape:t,earlier:a?.text})}}function D1({length_m:s,velocity_factor:e,lowest_hz:t,highest_hz:n,most_points:i},r){return{...F1(r),length_m:s,velocity_factor:e,lowest_hz:t,highest_hz:n,most_points:i}}function G1({name:s,size:e}){return e<=H1?"":`${s} has ${(e/1e6).toFixed(0)} MB; allowed: a Touchstone file of at most ${H1/1e6} MB.`}var Jd=class extends b({name:{type:String},label:{type:String},held:{type:String},error:{type:String},_problem:$(c),_over:$(c)}){static styles=[_,g`
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
      </span>`}async _picked({target:e}){let[t]=e.files;if(!t)return;this._problem=G1(t);let n=this._problem?void 0:await t.text();e.value="",n!==void 0&&x(this,"jw-sweep-file",{name:this.name,file:{name:t.name,text:n}})}};customElements.define("jw-sweep-file",Jd);var Fr={line:{name:"Hill hut, invented",elements:[{kind:"joint",family:"n",name:"Shack panel"},{kind:"cable",cable:"rg_223",length_m:3},{kind:"joint",family:"n",name:"Wall"},{kind:"cable",cable:"rg_213",length_m:17},{kind:"joint",family:"n",name:"Mast foot"},{kind:"cable",cable:"rg_213",length_m:9},{kind:"joint",family:"n",name:"Mast top"}],load:{kind:"end",what:"short"},file:{name:"hill-hut.s1p",text:`! Invented: a line with its far end shorted, made by a script
# MHz S RI R 50
2.5 -0.0083 -0.8678
5 0.9244 0.0038
7.5 -0.0033 0.8350
10 -0.7435 -0.0334
12.5 0.0702 -0.7717
15 0.8292 0.0861
17.5 -0.1007 0.8003
20 -0.7165 -0.1359
22.5 0.1453 -0.6951
25 0.7379 0.1705
27.5 -0.2085 0.7630
30 -0.6846 -0.2235
32.5 0.2244 -0.6235
35 0.6616 0.2553
37.5 -0.2966 0.6948
40 -0.6381 -0.3117
42.5 0.3119 -0.5655
45 0.5771 0.3163
47.5 -0.3698 0.6093
50 -0.5857 -0.4065
52.5 0.3757 -0.5162
55 0.4833 0.3694
57.5 -0.4310 0.5199
60 -0.5214 -0.4806
62.5 0.4458 -0.4449
65 0.4058 0.4257
67.5 -0.4620 0.4268
70 -0.4275 -0.5320
72.5 0.5207 -0.3786
75 0.3358 0.4658
77.5 -0.4809 0.3287
80 -0.3268 -0.5607
82.5 0.5678 -0.2998
85 0.2492 0.5140
87.5 -0.5043 0.2344
90 -0.2371 -0.5710
92.5 0.6021 -0.1985
95 0.1678 0.5572
97.5 -0.5113 0.1561
100 -0.1343 -0.5518
102.5 0.6163 -0.0998
105 0.0897 0.5749
107.5 -0.5109 0.0583
110 -0.0452 -0.5394
112.5 0.5930 -0.0218
115 -0.0134 0.5817
117.5 -0.5295 -0.0222
120 0.0283 -0.5032
122.5 0.5548 0.0712
125 -0.1050 0.5805
127.5 -0.5141 -0.0943
130 0.1173 -0.4679
132.5 0.5140 0.1515
135 -0.1686 0.5442
137.5 -0.4902 -0.1890
140 0.1903 -0.4386
142.5 0.4602 0.1990
145 -0.2456 0.4822
147.5 -0.4725 -0.2737
150 0.2528 -0.4058
152.5 0.3892 0.2607
155 -0.3028 0.4254
157.5 -0.4235 -0.3246
160 0.3279 -0.3558
162.5 0.3396 0.3180
165 -0.3308 0.3632
167.5 -0.3413 -0.3912
170 0.3969 -0.3015
172.5 0.2876 0.3501
175 -0.3619 0.2739
177.5 -0.2718 -0.4255
180 0.4355 -0.2513
182.5 0.2077 0.3900
185 -0.3875 0.2107
187.5 -0.2057 -0.4264
190 0.4736 -0.1574
192.5 0.1426 0.4426
195 -0.3897 0.1547
197.5 -0.1147 -0.4244
200 0.4898 -0.0874
202.5 0.0866 0.4619
205 -0.3984 0.0672
207.5 -0.0520 -0.4247
210 0.4742 -0.0265
212.5 -0.0001 0.4645
215 -0.4260 -0.0033
217.5 0.0021 -0.3951
220 0.4382 0.0595
222.5 -0.0744 0.4731
225 -0.4102 -0.0554
227.5 0.0919 -0.3713
230 0.4146 0.1181
232.5 -0.1254 0.4437
235 -0.3910 -0.1459
237.5 0.1552 -0.3641
240 0.3765 0.1541
242.5 -0.1997 0.3924
245 -0.3810 -0.2204
247.5 0.1935 -0.3298
250 0.3159 0.2113
252.5 -0.2459 0.3589
255 -0.3420 -0.2575
257.5 0.2687 -0.2751
260 0.2846 0.2711
262.5 -0.2565 0.3031
265 -0.2748 -0.3110
267.5 0.3267 -0.2468
270 0.2444 0.2822
272.5 -0.2912 0.2249
275 -0.2296 -0.3496
277.5 0.3559 -0.1982
280 0.1695 0.3280
282.5 -0.3123 0.1915
285 -0.1727 -0.3409
287.5 0.3856 -0.1137
290 0.1211 0.3803
292.5 -0.3099 0.1378
295 -0.0798 -0.3455
297.5 0.4073 -0.0633
300 0.0758 0.3787
302.5 -0.3247 0.0590
305 -0.0425 -0.3488
307.5 0.3871 -0.0197
310 -0.0124 0.3893
312.5 -0.3491 0.0139
315 0.0022 -0.3167
317.5 0.3640 0.0559
320 -0.0614 0.4007
322.5 -0.3375 -0.0400
325 0.0802 -0.2946
327.5 0.3483 0.1047
330 -0.1043 0.3761
332.5 -0.3146 -0.1225
335 0.1270 -0.2941
337.5 0.3132 0.1274
340 -0.1697 0.3253
342.5 -0.3122 -0.1782
345 0.1621 -0.2604
347.5 0.2629 0.1898
350 -0.2052 0.3055
352.5 -0.2784 -0.2019
355 0.2307 -0.2138
357.5 0.2425 0.2261
360 -0.2105 0.2565
362.5 -0.2116 -0.2641
365 0.2823 -0.2000
367.5 0.2029 0.2286
370 -0.2454 0.1923
372.5 -0.1887 -0.2882
375 0.2948 -0.1542
377.5 0.1340 0.2866
380 -0.2647 0.1658
382.5 -0.1346 -0.2733
385 0.3286 -0.0800
387.5 0.1047 0.3218
390 -0.2489 0.1239
392.5 -0.0545 -0.2788
395 0.3569 -0.0358
397.5 0.0694 0.3230
400 -0.2730 0.0397
402.5 -0.0274 -0.2984
405 0.3250 -0.0006
407.5 -0.0205 0.3309
410 -0.2932 0.0123
412.5 0.0046 -0.2583
415 0.3069 0.0755
417.5 -0.0614 0.3421
420 -0.2733 -0.0268
422.5 0.0795 -0.2411
425 0.3059 0.1007
427.5 -0.0874 0.3115
430 -0.2545 -0.1138
432.5 0.1180 -0.2465
435 0.2612 0.1140
437.5 -0.1542 0.2740
440 -0.2626 -0.1509
442.5 0.1373 -0.2110
445 0.2159 0.1737
447.5 -0.1771 0.2706
450 -0.2176 -0.1704
452.5 0.2110 -0.1613
455 0.2143 0.2029
457.5 -0.1750 0.2154
460 -0.1561 -0.2293
462.5 0.2470 -0.1592
465 0.1668 0.2044
467.5 -0.2118 0.1572
470 -0.1490 -0.2496
472.5 0.2530 -0.1142
475 0.1035 0.2523
477.5 -0.2310 0.1505
480 -0.1034 -0.2305
482.5 0.2932 -0.0366
485 0.0929 0.2827
487.5 -0.2106 0.1054
490 -0.0280 -0.2399
492.5 0.3029 -0.0213
495 0.0543 0.2756
497.5 -0.2321 0.0303
500 -0.0154 -0.2459
`},after:{name:"hill-hut-mended.s1p",text:`! Invented: a line with its far end shorted, made by a script
# MHz S RI R 50
2.5 0.0007 -0.9490
5 0.9136 0.0062
7.5 -0.0015 0.8755
10 -0.8662 -0.0376
12.5 0.0898 -0.8740
15 0.8465 0.0879
17.5 -0.0967 0.8147
20 -0.8160 -0.1498
22.5 0.1699 -0.8008
25 0.7803 0.1778
27.5 -0.2113 0.7640
30 -0.7537 -0.2385
32.5 0.2612 -0.7329
35 0.7202 0.2857
37.5 -0.2948 0.6995
40 -0.6795 -0.3232
42.5 0.3557 -0.6654
45 0.6427 0.3640
47.5 -0.3743 0.6160
50 -0.6035 -0.4114
52.5 0.4283 -0.5894
55 0.5641 0.4348
57.5 -0.4525 0.5458
60 -0.5175 -0.4710
62.5 0.4906 -0.4890
65 0.4822 0.4965
67.5 -0.5101 0.4581
70 -0.4201 -0.5265
72.5 0.5455 -0.4037
75 0.3941 0.5429
77.5 -0.5485 0.3677
80 -0.3278 -0.5750
82.5 0.5791 -0.3129
85 0.2867 0.5792
87.5 -0.5907 0.2704
90 -0.2384 -0.5961
92.5 0.6039 -0.2014
95 0.1881 0.6067
97.5 -0.6040 0.1791
100 -0.1339 -0.6049
102.5 0.6122 -0.1029
105 0.0993 0.6086
107.5 -0.6026 0.0787
110 -0.0372 -0.6123
112.5 0.6063 -0.0153
115 -0.0050 0.5960
117.5 -0.5959 -0.0204
120 0.0365 -0.5887
122.5 0.5814 0.0823
125 -0.0973 0.5791
127.5 -0.5700 -0.0979
130 0.1374 -0.5549
132.5 0.5546 0.1731
135 -0.1685 0.5386
137.5 -0.5213 -0.1951
140 0.2237 -0.5258
142.5 0.5150 0.2288
145 -0.2515 0.4911
147.5 -0.4806 -0.2765
150 0.2790 -0.4675
152.5 0.4491 0.3068
155 -0.3244 0.4354
157.5 -0.4258 -0.3313
160 0.3508 -0.3894
162.5 0.3983 0.3743
165 -0.3619 0.3890
167.5 -0.3404 -0.3939
170 0.4052 -0.3216
172.5 0.3331 0.3977
175 -0.4169 0.3079
177.5 -0.2790 -0.4382
180 0.4383 -0.2591
182.5 0.2496 0.4416
185 -0.4548 0.2401
187.5 -0.2145 -0.4500
190 0.4702 -0.1627
192.5 0.1697 0.4750
195 -0.4620 0.1790
197.5 -0.1202 -0.4689
200 0.4908 -0.0857
202.5 0.1030 0.4781
205 -0.4756 0.0839
207.5 -0.0514 -0.4834
210 0.4847 -0.0267
212.5 0.0040 0.4764
215 -0.4794 0.0061
217.5 0.0070 -0.4665
220 0.4634 0.0641
222.5 -0.0767 0.4719
225 -0.4565 -0.0525
227.5 0.1056 -0.4367
230 0.4548 0.1366
232.5 -0.1225 0.4456
235 -0.4175 -0.1446
237.5 0.1710 -0.4188
240 0.4249 0.1830
242.5 -0.2102 0.4000
245 -0.3921 -0.2166
247.5 0.2130 -0.3782
250 0.3674 0.2445
252.5 -0.2583 0.3714
255 -0.3421 -0.2541
257.5 0.2811 -0.3107
260 0.3318 0.3046
262.5 -0.2902 0.3275
265 -0.2723 -0.3178
267.5 0.3442 -0.2660
270 0.2800 0.3225
272.5 -0.3350 0.2542
275 -0.2272 -0.3553
277.5 0.3577 -0.2104
280 0.1999 0.3692
282.5 -0.3711 0.2144
285 -0.1745 -0.3625
287.5 0.3892 -0.1136
290 0.1423 0.3962
292.5 -0.3733 0.1597
295 -0.0905 -0.3771
297.5 0.4141 -0.0660
300 0.0882 0.3939
302.5 -0.3851 0.0682
305 -0.0391 -0.3940
307.5 0.4031 -0.0089
310 -0.0065 0.3929
312.5 -0.3930 0.0149
315 0.0065 -0.3841
317.5 0.3826 0.0770
320 -0.0644 0.4018
322.5 -0.3705 -0.0296
325 0.0906 -0.3606
327.5 0.3772 0.1234
330 -0.0953 0.3691
332.5 -0.3332 -0.1308
335 0.1439 -0.3497
337.5 0.3492 0.1513
340 -0.1823 0.3315
342.5 -0.3203 -0.1766
345 0.1744 -0.3074
347.5 0.3029 0.2219
350 -0.2264 0.3165
352.5 -0.2757 -0.2057
355 0.2515 -0.2457
357.5 0.2828 0.2619
360 -0.2336 0.2759
362.5 -0.2081 -0.2592
365 0.2927 -0.2152
367.5 0.2406 0.2765
370 -0.2834 0.2098
372.5 -0.1835 -0.2959
375 0.2973 -0.1629
377.5 0.1596 0.3128
380 -0.3146 0.1832
382.5 -0.1347 -0.2924
385 0.3304 -0.0735
387.5 0.1213 0.3469
390 -0.3036 0.1411
392.5 -0.0468 -0.3126
395 0.3547 -0.0378
397.5 0.0738 0.3301
400 -0.3101 0.0564
402.5 -0.0264 -0.3331
405 0.3240 0.0088
407.5 -0.0226 0.3343
410 -0.3367 0.0174
412.5 0.0110 -0.3067
415 0.3252 0.0891
417.5 -0.0620 0.3480
420 -0.2967 -0.0218
422.5 0.0892 -0.2916
425 0.3309 0.1117
427.5 -0.0875 0.3103
430 -0.2702 -0.1090
432.5 0.1280 -0.2860
435 0.2931 0.1316
437.5 -0.1672 0.2743
440 -0.2674 -0.1547
442.5 0.1535 -0.2471
445 0.2535 0.2032
447.5 -0.1849 0.2767
450 -0.2153 -0.1700
452.5 0.2229 -0.1897
455 0.2506 0.2310
457.5 -0.1966 0.2341
460 -0.1601 -0.2224
462.5 0.2475 -0.1770
465 0.2022 0.2328
467.5 -0.2442 0.1695
470 -0.1429 -0.2518
472.5 0.2515 -0.1168
475 0.1280 0.2828
477.5 -0.2618 0.1590
480 -0.0984 -0.2426
482.5 0.2848 -0.0395
485 0.1062 0.2989
487.5 -0.2452 0.1182
490 -0.0279 -0.2701
492.5 0.3007 -0.0132
495 0.0517 0.2820
497.5 -0.2707 0.0362
500 -0.0101 -0.2845
`}},jumper:{name:"Jumper, invented",elements:[{kind:"joint",family:"n"},{kind:"cable",cable:"rg_223",length_m:1.5},{kind:"joint",family:"n"}],load:{kind:"end",what:"matched"},file:{name:"jumper.s2p",text:`! Invented: a jumper, made by a script
# MHz S RI R 50
20 -0.0115 -0.0530 0.4919 -0.7874 0.4933 -0.7910 0.0680 -0.0026
40 -0.0300 0.0358 -0.3984 -0.8395 -0.4002 -0.8433 0.0531 -0.0052
60 0.0533 0.0210 -0.9179 -0.1185 -0.9141 -0.1172 0.0539 0.0065
80 0.0016 -0.0517 -0.5961 0.7097 -0.5974 0.7122 0.0692 -0.0040
100 -0.0386 0.0298 0.2736 0.8803 0.2758 0.8800 0.0582 -0.0012
120 0.0390 0.0404 0.8852 0.2400 0.8846 0.2490 0.0558 0.0079
140 0.0139 -0.0415 0.6820 -0.6136 0.6834 -0.6088 0.0652 0.0110
160 -0.0514 0.0171 -0.1451 -0.8990 -0.1463 -0.9007 0.0574 -0.0029
180 0.0296 0.0528 -0.8372 -0.3658 -0.8393 -0.3650 0.0570 0.0111
200 0.0339 -0.0274 -0.7575 0.5080 -0.7576 0.5084 0.0677 0.0181
220 -0.0460 0.0008 0.0208 0.9083 0.0196 0.9056 0.0669 -0.0101
240 0.0166 0.0584 0.7791 0.4717 0.7735 0.4775 0.0507 0.0149
260 0.0380 -0.0170 0.8155 -0.3962 0.8164 -0.3927 0.0657 0.0203
280 -0.0380 -0.0146 0.1106 -0.8982 0.1082 -0.8942 0.0613 -0.0048
300 -0.0026 0.0569 -0.6993 -0.5749 -0.6931 -0.5746 0.0485 0.0017
320 0.0563 -0.0034 -0.8557 0.2729 -0.8558 0.2670 0.0604 0.0266
340 -0.0234 -0.0202 -0.2328 0.8658 -0.2331 0.8721 0.0672 0.0013
360 -0.0110 0.0599 0.6072 0.6646 0.6013 0.6685 0.0526 0.0095
380 0.0538 0.0133 0.8850 -0.1454 0.8863 -0.1412 0.0638 0.0311
400 -0.0083 -0.0314 0.3518 -0.8213 0.3549 -0.8263 0.0811 0.0095
420 -0.0222 0.0501 -0.4982 -0.7395 -0.4994 -0.7436 0.0525 0.0062
440 0.0506 0.0345 -0.8907 0.0212 -0.8876 0.0194 0.0575 0.0337
460 0.0060 -0.0259 -0.4693 0.7647 -0.4675 0.7591 0.0852 0.0194
480 -0.0302 0.0419 0.3844 0.8045 0.3885 0.7986 0.0585 0.0027
500 0.0431 0.0529 0.8838 0.1057 0.8801 0.1053 0.0534 0.0342
520 0.0228 -0.0198 0.5682 -0.6840 0.5679 -0.6764 0.0890 0.0280
540 -0.0312 0.0290 -0.2617 -0.8484 -0.2707 -0.8478 0.0593 0.0007
560 0.0329 0.0565 -0.8565 -0.2384 -0.8502 -0.2341 0.0521 0.0268
580 0.0414 -0.0142 -0.6595 0.5884 -0.6572 0.5922 0.0855 0.0338
600 -0.0301 0.0153 0.1444 0.8792 0.1431 0.8736 0.0784 -0.0016
620 0.0261 0.0665 0.8053 0.3466 0.8155 0.3537 0.0510 0.0243
640 0.0487 0.0039 0.7306 -0.4972 0.7294 -0.4879 0.0826 0.0380
660 -0.0176 0.0055 -0.0132 -0.8837 -0.0154 -0.8796 0.0887 0.0000
680 0.0091 0.0666 -0.7497 -0.4559 -0.7464 -0.4598 0.0506 0.0192
700 0.0568 0.0182 -0.7943 0.3792 -0.7910 0.3801 0.0783 0.0489
720 -0.0038 -0.0088 -0.1123 0.8737 -0.1094 0.8710 0.0949 0.0116
740 0.0045 0.0575 0.6754 0.5601 0.6734 0.5569 0.0526 0.0085
760 0.0579 0.0310 0.8373 -0.2613 0.8345 -0.2550 0.0676 0.0501
780 0.0121 -0.0059 0.2329 -0.8413 0.2344 -0.8459 0.1034 0.0139
800 0.0034 0.0468 -0.5859 -0.6475 -0.5914 -0.6466 0.0602 0.0016
820 0.0586 0.0448 -0.8602 0.1383 -0.8625 0.1379 0.0656 0.0489
840 0.0254 -0.0084 -0.3490 0.8024 -0.3496 0.7999 0.1055 0.0201
860 -0.0007 0.0398 0.4823 0.7280 0.4826 0.7248 0.0689 -0.0028
880 0.0521 0.0509 0.8709 -0.0146 0.8640 -0.0176 0.0647 0.0489
900 0.0425 -0.0009 0.4537 -0.7377 0.4590 -0.7385 0.1157 0.0390
920 0.0007 0.0251 -0.3775 -0.7841 -0.3760 -0.7835 0.0824 -0.0103
940 0.0444 0.0575 -0.8604 -0.1120 -0.8573 -0.1075 0.0536 0.0375
960 0.0465 0.0040 -0.5592 0.6657 -0.5550 0.6641 0.1101 0.0507
980 0.0043 0.0165 0.2530 0.8276 0.2565 0.8313 0.0964 -0.0077
1000 0.0398 0.0544 0.8335 0.2297 0.8271 0.2325 0.0524 0.0283
`}}};var Ur="own-",jt="none",Dr=s=>[...Object.entries(Fr).map(([e,{name:t}])=>[e,`Example: ${t}`]),...s.lines.map(({name:e},t)=>[`${Ur}${t}`,e||`Line ${t+1}`]),[jt,"No line described: echoes by distance"]],K1=s=>`${Ur}${s}`,Zd=s=>s.startsWith(Ur),Et=s=>Object.hasOwn(Fr,s),T3={name:"a line not described",request:{elements:[]},file:void 0,after:void 0};function Ls(s,e){if(s===jt)return T3;if(Et(s)){let{name:n,elements:i,load:r,file:a,after:l}=Fr[s];return{name:n,request:{elements:i,load:r},file:a,after:l}}let t=e.lines[Number(s.slice(Ur.length))];return Zd(s)&&t?{...t,file:void 0,after:void 0}:Ls("line",e)}var Qd=class extends b({state:m(c),document:m(c),file:m(c),earlier:m(c),refusal:m(c)},j){static styles=[_,ue,g`
      :host {
        display: grid; gap: 8px; padding: 12px; background: var(--card); border: 1px solid var(--line);
        border-radius: var(--round); align-content: start;
      }
      h2 { font-size: 1.05rem; }
      .of label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      p a { display: inline-grid; min-height: var(--target); align-items: center; }
      p { font-size: 0.9rem; }
    `];render(){let{state:e,file:t,earlier:n}=this,i=this._refusalOf("elements")??this._refusalOf("load");return o`<h2>The sweep</h2>
      <jw-sweep-file name="touchstone" label="Sweep from your analyser" held=${t?.name??""}
        error=${this._fileProblem("touchstone",t)}></jw-sweep-file>
      <div class="of">
        <label for="of">Line it was taken on</label>
        <select id="of" @change=${r=>x(this,"jw-sweep-change",{changes:{of:r.target.value}})}>
          ${Dr(this.document).map(([r,a])=>o`<option value=${r} .selected=${r===e.of}>${a}</option>`)}
        </select>
      </div>
      ${A3(e.of)}
      ${i?o`<p class="error" role="alert">${i.message}</p>`:h}
      <div class="fields" @jw-change=${this._changed}>
        ${e.of===jt?this._field("velocity_factor"):o`${this._field("end")}${this._field("length_tolerance")}`}
      </div>
      <details ?open=${!!n||de(this.refusal)==="earlier"}>
        <summary>Earlier sweep and window <small>${n?.name??"none"}</small></summary>
        <jw-sweep-file name="earlier" label="An earlier sweep to compare with" held=${n?.name??""}
          error=${this._fileProblem("earlier",n)}></jw-sweep-file>
        ${n?o`<button @click=${()=>x(this,"jw-sweep-forget")}>No earlier sweep</button>`:h}
        <div class="fields" @jw-change=${this._changed}>${this._field("window_shape")}</div>
      </details>`}_refusalOf(e){return de(this.refusal)===e?this.refusal:void 0}_fileProblem(e,t){let n=this._refusalOf(e);return n&&t?Ns(n,t.name):""}_field(e){return C(this.vocabulary,`sweep.${e}`,this.state[e],this._refusalOf(e)?.message)}_changed(e){e.stopPropagation(),e.detail.live||x(this,"jw-sweep-change",{changes:I(e)})}},A3=s=>Et(s)?o`<p class="quiet">Line and measurement are invented, to show what comes out.</p>`:s===jt?o`<p class="quiet">With the line described, the page can name the joint.</p>`:o`<p><a href="#view=line">Change the line in the Line view</a></p>`;customElements.define("jw-sweep-form",Qd);var V1=()=>new Date().toISOString().slice(0,10),ec=class extends b({entries:m(c),line:{type:String},keepable:{type:Boolean},load:m(c),_date:$(c)}){static styles=[_,T,_t,g`
      .bar { display: flex; flex-wrap: wrap; gap: 6px 10px; align-items: end; margin-bottom: 8px; }
      .bar label:not(.pick) { font-size: 0.8rem; font-weight: 600; }
      .bar input[type='date'] { width: auto; }
      td button { font-size: 0.85rem; padding: 0 10px; }
      .scroll { overflow-x: auto; }
      @media print { .bar, td:last-child, th:last-child { display: none; } }
    `];constructor(){super(),this._date=V1()}willUpdate(e){if(!e.has("entries")&&!e.has("line"))return;let t=l1(this.entries,this.line);this._figure=t&&(n=>B1(t,n)),this._title=t?.title}render(){let{entries:e}=this,t=i=>this._date=i.target.value||V1(),n=()=>ps("jointwise-sweeps.json",c1(e));return o`<section class="panel" id="kept">
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
              label="${this._title} of ${this.line} over the days of the kept sweeps"></jw-chart>`:h}
    </section>`}_table(){return o`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Day</th><th scope="col">Line</th><th scope="col">What it told</th><th scope="col">Do</th>
        </tr>
      </thead>
      <tbody>
        ${this.entries.toReversed().map(e=>this._row(e))}
      </tbody>
    </table></div>`}_row(e){let{date:t,line:n,verdict:i}=e;return o`<tr>
      <td>${t}</td><th scope="row">${n}</th><td>${i}</td>
      <td>
        <button aria-label="Compare with the sweep of ${n} of ${t}"
          @click=${()=>x(this,"jw-sweep-compare",{entry:e})}>Compare</button>
        <button aria-label="Remove the sweep of ${n} of ${t}"
          @click=${()=>x(this,"jw-sweep-drop",{entry:e})}>Remove</button>
      </td>
    </tr>`}async _import({target:e}){let[t]=e.files;if(!t)return;let n=await t.text();e.value="";try{x(this,"jw-sweep-import",{entries:u1(n)})}catch(i){if(!(i instanceof RangeError))throw i;x(this,"jw-notice",{text:`${t.name} was not taken. ${i.message}`})}}};customElements.define("jw-sweep-history",ec);var q3=["lowest_hz","highest_hz","most_points","length_m","velocity_factor"],M3="The range of your analyser must end at twice its beginning or higher.",tc=class extends b({hunt:m(c),state:m(c),document:m(c),file:m(c),span:m(c),spanRefusal:m(c),result:m(c),refusal:m(c)},j){static styles=[_,ue,g`
      :host { padding: 12px; background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      h2 { font-size: 1.05rem; margin-bottom: 4px; }
      ol.steps { list-style: none; margin: 0; padding: 0; }
      .steps > li { border-top: 1px solid var(--line); border-left: 4px solid transparent; padding-left: 6px; }
      .steps > li[data-open] { border-left-color: var(--accent); }
      h3 { font-weight: 600; }
      h3 button {
        display: grid; grid-template-columns: 1.8em minmax(0, 1fr); width: 100%; padding: 6px 2px; border: 0;
        background: none; color: inherit; text-align: left; font-weight: 600; font-size: 0.95rem; align-items: center;
      }
      h3 button[aria-expanded='true'] { background: none; color: inherit; font-weight: 700; }
      h3 small { grid-column: 2; font-weight: 400; color: var(--soft); overflow-wrap: anywhere; }
      .body { display: grid; gap: 8px; padding: 0 2px 12px 1.8em; font-size: 0.92rem; justify-items: start; }
      .body[hidden] { display: none; }
      .body > * { max-width: 100%; min-width: 0; }
      .body ol, .body ul { margin: 0; padding-left: 1.2em; }
      .body ul { list-style: disc; }
      .body li + li { margin-top: 4px; }
      .hands {
        padding: 8px 12px; border-left: 4px solid var(--alarm); background: var(--alarm-wash); border-radius: 4px;
      }
      .next { background: var(--ink); border-color: var(--ink); color: var(--paper); font-weight: 600; }
      .buttons { display: flex; flex-wrap: wrap; gap: 8px; }
      .of { width: 100%; }
      .of label { display: block; font-size: 0.8rem; font-weight: 600; margin-bottom: 3px; }
      .fields { width: 100%; }
      dl { display: flex; flex-wrap: wrap; gap: 4px 20px; }
      dt { font-size: 0.8rem; color: var(--soft); }
      dd { font-size: 1.12rem; font-weight: 700; }
      jw-sweep-file { width: 100%; }
      .places { font-weight: 650; }
      @media (max-width: 600px) { .body { padding-left: 2px; } }
    `];updated(e){let t=e.get("hunt");t&&t.at!==this.hunt.at&&this._pressed&&N(this.renderRoot,`#step-${this.hunt.at}`).focus(),this._pressed=!1}render(){return o`<h2>Find it step by step</h2>
      <ol class="steps" @jw-change=${this._changed}>${kt.map(([e,t],n)=>this._step(e,t,n))}</ol>`}_step(e,t,n){let i=e===this.hunt.at,r=this._done(e);return o`<li ?data-open=${i}>
      <h3><button id="step-${e}" aria-expanded=${i?"true":"false"} aria-controls="body-${e}"
        @click=${()=>this._go(e)}>
        <span aria-hidden="true">${n+1}</span><span>${t}</span>${r?o`<small>${r}</small>`:h}
      </button></h3>
      <div class="body" id="body-${e}" ?hidden=${!i}>${i?this._body(e):h}</div>
    </li>`}_done(e){let{file:t,hunt:n,span:i,state:r}=this;return e==="line"?r.of===jt?"none described":Ls(r.of,this.document).name:e==="span"&&i?`${O(i.low_hz)} to ${O(i.high_hz)}, ${i.points} points`:e==="end"?this.vocabulary.wordsOf("sweep.end").options?.[r.end]:e==="sweep"?(n.before?.file??t)?.name:e==="again"&&n.before?t?.name:""}_body(e){switch(e){case"line":return this._line();case"safe":return o`<ol>${S1.map(t=>o`<li>${t}</li>`)}</ol>${this._next("Off and locked out")}`;case"span":return this._span();case"calibrate":return this._calibrate();case"end":return o`<p class="hands">${Ud}</p>${this._field("end")}<p>${j1[this.state.end]}</p>
          ${this._next("The far end is ready")}`;case"sweep":return this._sweep();case"place":return this._place();case"again":return this._again();default:return this._compare()}}_line(){let{state:e}=this;return o`<p>
        With its parts described, the page knows what a good line of this kind shows, and can name the joint. Without
        them it shows echoes by distance.
      </p>
      <div class="of">
        <label for="of">The line</label>
        <select id="of" @change=${n=>x(this,"jw-sweep-change",{changes:{of:n.target.value}})}>
          ${Dr(this.document).map(([n,i])=>o`<option value=${n} .selected=${n===e.of}>${i}</option>`)}
        </select>
      </div>
      ${e.of===jt?o`<div class="fields">${this._field("length_m")}${this._field("velocity_factor")}</div>`:Et(e.of)?o`<p class="quiet">Line and measurement are invented, to try the steps on.</p>`:o`<a href="#view=line">Change the line in the Line view</a>`}
      ${this._next("This is the line")}`}_span(){let{span:e}=this;return o`<div class="fields">
        ${this._field("lowest_hz")}${this._field("highest_hz")}${this._field("most_points")}
      </div>
      ${this._spanTrouble()}
      ${e?o`<dl id="span">
                <div><dt>Start</dt><dd>${O(e.low_hz)}</dd></div>
                <div><dt>Stop</dt><dd>${O(e.high_hz)}</dd></div>
                <div><dt>Points</dt><dd>${e.points}</dd></div>
              </dl>
              <ul>${e.reasons.map(t=>o`<li>${t}</li>`)}</ul>`:o`<p class="quiet">${this.spanRefusal?"":"Calculating…"}</p>`}
      ${this._next("The analyser is set")}`}_spanTrouble(){let e=this.spanRefusal;if(!e||this._refusalOf(de(e)))return h;let t=de(e)==="highest_hz"?M3:e.message;return o`<p class="error" role="alert">${t}</p>`}_calibrate(){let{span:e}=this,t=e?`, over ${O(e.low_hz)} to ${O(e.high_hz)}`:"";return o`<ol>
        <li>Let the analyser warm up for as long as its maker says.</li>
        <li>Calibrate open, short and load${t}, at the very connector that the line goes on, adapter included.</li>
        <li>Check: with the short still on, all comes back at every frequency; with the load on, next to nothing.</li>
      </ol>
      <p>Why: what calibration leaves over looks like a bad joint next to the analyser.</p>
      ${this._next("Calibrated")}`}_sweep(){let{file:e,hunt:t}=this,n=t.before?.file??e;return o`<p>Screw the line on, leave it alone while it sweeps, and save a one-port Touchstone file (.s1p).</p>
      <jw-sweep-file name="touchstone" label="The sweep" held=${n?.name??""}
        error=${t.before?"":this._problem()}></jw-sweep-file>
      ${this._verdict()} ${this.result?this._next("Where do I go?"):h}`}_place(){if(!this.result)return this._missing();let{places:e,work:t,why:n}=E1(this.hunt.before?.result??this.result);return o`<p>${n}</p>
      ${e.length>0?o`<ul class="places">${e.map(i=>o`<li>${i}</li>`)}</ul>`:h}
      ${t.length>0?o`<p class="hands">${Ud}</p>
              <ol>${t.map(i=>o`<li>${i}</li>`)}</ol>`:h}
      ${this._next(e.length>0?"Done there":"Sweep again")}`}_again(){if(!this.result&&!this.hunt.before)return this._missing();let{after:e}=Ls(this.state.of,this.document),t=()=>{this._pressed=!0,x(this,"jw-sweep-file",{name:"again",file:e})};return o`<p>
        Same end, same span, same calibration: then what differs is what you did. Leave the line alone while it sweeps.
      </p>
      <jw-sweep-file name="again" label="The sweep after it" held=${this.hunt.before?this.file?.name??"":""}
        error=${this.hunt.before?this._problem():""}></jw-sweep-file>
      ${e?o`<button @click=${t}>Use the invented one</button>`:h}`}_compare(){let{before:e}=this.hunt;if(!e)return this._missing();let t=()=>this._send({at:"place"}),n=()=>this._send({at:kt[0][0]});return o`<p>Both sweeps over distance, and what changed, stand in the answer.</p>
      ${this._verdict()}
      <div class="buttons">
        <button class="next" @click=${t}>Go on from this sweep</button>
        <button @click=${n}>Begin again</button>
      </div>`}_missing(){return o`<p>First give the sweep.</p>
      <button class="next" @click=${()=>this._go("sweep")}>To the sweep</button>`}_verdict(){return o`<p role="status"><b>${this.result?.verdict??""}</b></p>`}_problem(){let{file:e,refusal:t}=this;return t&&e?Ns(t,e.name):""}_next(e){return o`<button class="next" @click=${()=>this._go($1(this.hunt.at))}>${e}</button>`}_field(e){return C(this.vocabulary,`sweep.${e}`,this.state[e],this._refusalOf(e)?.message)}_refusalOf(e){let t=this.spanRefusal;return q3.includes(e)&&de(t)===e&&!t?.allowed.includes("where its range begins")?t:void 0}_changed(e){e.stopPropagation(),e.detail.live||x(this,"jw-sweep-change",{changes:I(e)})}_go(e){this._send({...this.hunt,at:e})}_send(e){this._pressed=!0,x(this,"jw-sweep-hunt",{hunt:e})}};customElements.define("jw-sweep-hunt",tc);var C3=2,sc=class extends b({check:m(c),load:m(c),_overFrequency:$(c)}){static styles=[_,T,g`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; }
      .pair { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr)); gap: 12px; }
      .scroll { overflow-x: auto; }
      ol { list-style: none; margin: 0; padding: 0; }
      #parts li {
        display: grid; grid-template-columns: 1.6em minmax(0, 1fr); gap: 0 8px; padding: 5px 0;
        border-bottom: 1px solid var(--line); font-size: 0.92rem;
      }
      #parts li:last-child { border-bottom: 0; }
      #parts li[data-accused] { background: var(--alarm-wash); font-weight: 650; }
      #parts li[data-accused] .sign { color: var(--alarm); }
      .sign { grid-row: span 2; text-align: center; font-weight: 700; }
      @media (min-width: 700px) {
        #parts li { grid-template-columns: 1.6em minmax(0, 22em) minmax(0, 1fr); }
        .sign { grid-row: auto; }
      }
      #parts .cable { color: var(--soft); }
      tr[data-accused] { background: var(--alarm-wash); font-weight: 650; }
      td.words { min-width: 9em; }
      details.panel { padding-top: 2px; padding-bottom: 2px; }
      details[open].panel { padding-bottom: 12px; }
      summary { cursor: pointer; min-height: var(--target); align-content: center; font-weight: 600; }
      p + .scroll { margin-top: 6px; }
      @media print { :host, .pair { display: block; } .panel { margin-bottom: 2mm; } .scroll { overflow: visible; } }
    `];willUpdate(e){if(!e.has("check"))return;let{check:t}=this;this._distance=n=>T1(t,n),this._returned=n=>z1(t,n),this._smith=n=>L1(t,n)}updated(){Os(this.renderRoot.querySelectorAll(".scroll"))}render(){let{check:e}=this;return o`<section class="panel" id="parts"><h2>Part by part <small>from the analyser on</small></h2>
        <ol>${p1(e).map(n=>this._part(n))}</ol></section>
      <section class="panel" id="distance">
        <h2>Echoes along the line</h2>
        <jw-chart style="--chart:340px" .figure=${this._distance} .load=${this.load}
          label=${"Reflection against distance, measured and expected, a mark at each joint; the same numbers stand in the table of joints"}></jw-chart>
        <p class="quiet">
          Shaded: what a good line may show. The echo of the line’s end may run out of the picture.
        </p>
        <jw-sweep-place .check=${e}></jw-sweep-place>
      </section>
      ${this._joints()} ${this._fit()}
      <details class="panel more" @toggle=${n=>this._overFrequency=n.target.open} id="frequency">
        <summary>Return loss and Smith chart</summary>
        ${this._overFrequency?this._charts():h}
      </details>`}_part(e){let t=$t(e.element,this.check);return o`<li data-element=${e.element} ?data-accused=${t} class=${"from_m"in e?"cable":""}>
      <span class="sign" aria-hidden="true">${m1[e.state]}</span>
      <span>${e.element+1} · ${e.name}, ${e.place}</span>
      <span>${e.words}</span>
    </li>`}_charts(){return o`<div class="pair">
      <section id="returned"><h3>Return loss at the analyser</h3>
        <jw-chart .figure=${this._returned} .load=${this.load} label=${"Return loss against frequency: measured, expected of a sound line, and as fitted"}></jw-chart></section>
      <section id="smith"><h3>Smith chart at the analyser</h3>
        <jw-chart style="--chart:340px" .figure=${this._smith} .load=${this.load}
          label="Measured and fitted reflection on the Smith chart"></jw-chart></section>
    </div>`}_joints(){let{check:e}=this,t=e.joints.some(({change:n})=>n!==null);return o`<details class="panel more" id="joints">
      <summary>Numbers at each joint</summary>
      <div class="scroll"><table class="plain">
        <thead>
          <tr>
            <th scope="col">Joint</th><th scope="col" class="number">At</th><th scope="col">Finding</th>
            <th scope="col" class="number">Measured</th><th scope="col" class="number">Expected</th>
            <th scope="col" class="number">Excess</th><th scope="col" class="number">Threshold</th>
            ${t?o`<th scope="col" class="number">Change</th>`:h}
            <th scope="col" class="number">Smallest fault</th>
          </tr>
        </thead>
        <tbody>
          ${e.joints.map(n=>this._joint(n,t))}
        </tbody>
      </table></div>
      <p class="quiet">
        Reflections are shares of the wave sent. The last column is the smallest added resistance this sweep would show
        there. It reaches ${L(e.range_m)} and keeps echoes ${X(e.resolution_m,"m",2)} apart
        (${e.transform}, side lobes ${k(e.side_lobe_db,3)} dB down); velocity and loss of the cables are
        taken out.
      </p>
    </details>`}_joint(e,t){let{check:n}=this,i=$t(e.element,n),r=()=>`; ${X(e.nearest_m,"m",2)} to the next, too near for an echo of its own`;return o`<tr data-element=${e.element} ?data-accused=${i}>
      <th scope="row">${e.element+1} · ${e.name}</th>
      <td class="number">${X(e.distance_m,"m",3)}</td>
      <td class="words">${e.words}${e.separate?"":r()}</td>
      <td class="number">${me(e.measured)}</td><td class="number">${me(e.expected)}</td>
      <td class="number">${me(e.excess)}</td><td class="number">${me(e.threshold)}</td>
      ${t?o`<td class="number">${me(e.change)}</td>`:h}
      <td class="number">${g1(e)}</td>
    </tr>`}_fit(){let{candidates:e,deviations:t,floor:n,noise:i}=this.check;return o`<details class="panel more" id="fit">
      <summary>What explains the sweep</summary>
      ${e.length===0?o`<p>
              The line as it should be leaves ${vt(i)} of the reflection unexplained. Everyday lines leave
              ${vt(n)}, which counts as no fault.
            </p>`:R3(e)}
      <h3>Good parts as fitted</h3>
      <div class="scroll"><table class="plain">
        <thead>
          <tr>
            <th scope="col">Cable</th><th scope="col">What</th>
            <th scope="col" class="number">Off by</th><th scope="col" class="number">±</th>
            <th scope="col" class="number">Usual</th>
          </tr>
        </thead>
        <tbody>
          ${t.map(N3)}
        </tbody>
      </table></div>
    </details>`}},R3=s=>o`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Where</th><th scope="col">What it does</th><th scope="col">Size, with its bounds</th>
          <th scope="col" class="number">Odds</th><th scope="col" class="number">Explains</th>
          <th scope="col" class="number">Leaves</th>
        </tr>
      </thead>
      <tbody>
        ${s.map(z3)}
      </tbody>
    </table></div>
    <p class="quiet">
      Bounds are one standard deviation. Odds are against a sound line; what is explained and what is left are rms of
      the reflection.
    </p>`,z3=s=>o`<tr>
    <th scope="row">${s.element+1} · ${s.joint}, ${L(s.distance_m)}</th>
    <td class="words">${s.name}</td>
    <td class="words">${s.sizes.map(e=>o`<div>${f1(e)}</div>`)}</td>
    <td class="number">${b1(s)}</td><td class="number">${vt(s.reflection)}</td>
    <td class="number">${vt(s.misfit)}</td>
  </tr>`,N3=({element:s,part:e,what:t,share:n,uncertainty:i,usual:r})=>o`<tr>
    <th scope="row">${s+1} · ${e}</th><td>${t}</td>
    <td class="number">${Math.abs(n)>C3*r?"! ":""}${vt(n)}</td>
    <td class="number">${vt(i)}</td><td class="number">${vt(r)}</td>
  </tr>`;customElements.define("jw-sweep-line",sc);var nc=s=>s===null?"–":`${s.toFixed(2).replace("-","−")} dB`,P3=s=>s<0?"✓ within the limit, as far as calibration tells":"✓ within the limit",ic=class extends b({part:m(c),load:m(c)}){static styles=[_,T,g`
      :host { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr)); gap: 12px; }
      .wide { grid-column: 1 / -1; }
      @media print { :host { display: block; } .panel { margin-bottom: 2mm; } }
    `];willUpdate(e){if(!e.has("part"))return;let{part:t}=this;this._loss=n=>W1(t,n),this._returned=n=>I1(t,n),this._smith=n=>P1(t,n)}render(){let{part:e}=this;return o`<section class="panel wide" id="part"><h2>Against the limits of its parts</h2>
        <table class="plain"><tbody>
          ${this._row("Loss",e.loss_passed,e.worst_loss_margin_db,e.worst_loss_at_hz)}
          ${this._row("Match",e.match_passed,e.worst_match_margin_db,e.worst_match_at_hz)}
          <tr>
            <th scope="row">Resistance in series</th>
            <td colspan="2">
              ${P(e.resistance_ohm,"Ω",3)} ± ${P(e.resistance_uncertainty_ohm,"Ω",2)},
              from the steady part of the excess loss
            </td>
          </tr>
          <tr>
            <th scope="row">Excess like skin effect</th>
            <td colspan="2">${nc(e.skin_excess_db_at_top)} at the upper edge</td>
          </tr>
          ${e.trend?W3(e.trend):h}
        </tbody></table>
      </section>
      <section class="panel" id="loss"><h2>Loss</h2>
        <jw-chart .figure=${this._loss} .load=${this.load} label=${"Loss against frequency: measured, expected, and what its parts may lose"}></jw-chart></section>
      <section class="panel" id="returned"><h2>Return loss</h2>
        <jw-chart .figure=${this._returned} .load=${this.load} label=${"Return loss into both ports against frequency, and the least its parts may have"}></jw-chart></section>
      <section class="panel" id="smith"><h2>Smith chart into port 1</h2>
        <jw-chart style="--chart:340px" .figure=${this._smith} .load=${this.load}
          label="Reflection into port 1 on the Smith chart"></jw-chart></section>`}get _overWords(){return this.part.finding==="cannot tell"?"? over the limit, by less than calibration leaves":"! over the limit"}_row(e,t,n,i){return o`<tr>
      <th scope="row">${e}</th><td>${t?P3(n):this._overWords}</td>
      <td class="number">margin ${nc(n)} at ${i===null?"–":O(i)}</td>
    </tr>`}},W3=({sentence:s,largest_loss_change_db:e,at_hz:t})=>o`<tr>
    <th scope="row">Since the earlier sweep</th>
    <td colspan="2">
      ${s} Largest change of loss ${nc(e)} at ${O(t)}.
    </td>
  </tr>`;customElements.define("jw-sweep-part",ic);var rc=class extends b({result:m(c),of:{type:String},outdated:{type:String}}){static styles=[_,T,g`
      .finding { display: flex; flex-wrap: wrap; gap: 6px 10px; align-items: baseline; }
      .mark {
        flex: none; min-width: 1.6em; padding: 1px 10px; border-radius: 99px; background: var(--sunk);
        border: 1px solid var(--edge); font-weight: 700; text-align: center;
      }
      .mark.bad { background: var(--alarm-wash); border-color: var(--alarm); color: var(--alarm); }
      #verdict { flex: 1 1 280px; font-size: 1.12rem; font-weight: 650; line-height: 1.35; overflow-wrap: anywhere; }
      h2 { margin: 10px 0 2px; font-size: 0.92rem; }
      ul { padding-left: 1.2em; font-size: 0.92rem; }
      .outdated {
        padding: 8px 12px; margin-top: 8px; background: var(--alarm-wash); border: 1px solid var(--alarm);
        border-radius: var(--round);
      }
      .quiet { margin-top: 8px; }
    `];render(){let{result:e}=this,{mark:t,words:n}=h1(e);return o`<section class="panel">
      <div class="finding" role="status">
        <span class="mark ${t==="!"?"bad":""}">${t} ${n}</span><p id="verdict">${e.verdict}</p>
      </div>
      ${Y1("advice","What to do",e.advice)}
      ${Y1("assumed","What this takes for granted",e.line?.assumed??[])}
      <p class="quiet">
        ${this.of}; ${e.points} points from ${O(e.low_hz)} to ${O(e.high_hz)},
        reference ${k(e.reference_ohm)} Ω. ${e.notes.join(" ")}
      </p>
      ${this.outdated?o`<p class="outdated" role="alert">${this.outdated}</p>`:h}
    </section>`}},Y1=(s,e,t)=>t.length===0?h:o`<h2>${e}</h2><ul id=${s}>${t.map(n=>o`<li>${n}</li>`)}</ul>`;customElements.define("jw-sweep-verdict",rc);var I3={key:"jointwise-sweeps",blocked:"This browser keeps nothing for the page: your sweeps end when it is closed. Export them to keep them.",full:"This browser has no room for more sweeps: the last one is not kept. Export the list and remove old ones.",spoilt:"The sweeps kept in this browser could not be read and were set aside. Save them as a file to look for what is left."},B3={key:"jointwise-hunt",blocked:"This browser keeps nothing for the page: the hunt begins anew when the page is loaded again.",full:"This browser has no room for the sweep of this hunt: give the file again if the page is loaded anew.",spoilt:"The hunt kept in this browser could not be read, and begins anew."},ac=new fe(B3,k1),Gr=new fe(I3,Wd,s=>Ld(Ee(s,Wr)));var Bn=class extends b({loadCharts:m(c),_document:$(c),_file:$(c),_earlier:$(c),_hunt:$(c)},Le){static view="sweep";static ownNames=["length_tolerance","window_shape","length_m","velocity_factor","lowest_hz","highest_hz","most_points","of","end","way"];static styles=[_,Ne,T,g`
      details.panel { padding-top: 2px; padding-bottom: 2px; }
      summary { cursor: pointer; min-height: var(--target); align-content: center; font-weight: 600; }
      .prompt { display: grid; place-content: center; min-height: 12em; }
      .headline .waiting { min-height: 12em; }
      .headline { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; }
      @media (min-width: 1180px) {
        main { grid-template-rows: auto auto 1fr; }
        .bar { grid-row: 1; }
        jw-sweep-form, jw-sweep-hunt { grid-column: 1; grid-row: 2 / span 2; }
        .headline { grid-column: 2; grid-row: 2; }
        .answer { grid-column: 2; grid-row: 3; }
        .headline:not(:has(*)) { display: none; }
      }
    `];_sweeps=c;constructor(){super(),this._document=Xe,this._hunt=x1,this._sweep=this._enquiry("sweep"),this._span=this._enquiry("span"),this._catalogue=this._enquiry("catalogue")}connectedCallback(){super.connectedCallback(),this._recallHunt()}_begin(){super._begin(),this._sweeps=new ze(Gr,Z,this.vocabulary.fields,[]),this._sweeps.attach(this,()=>{this._notice({text:"Sweeps that another tab keeps came in."}),this.requestUpdate()});let{problem:e,spoilt:t}=this._sweeps,n=()=>H("jointwise-sweeps-unread.txt","text/plain",t);t&&this._notice({text:e,action:{words:"Save them",run:n}})}get _entries(){return this._sweeps.present}get _state(){return super._state}render(){let{error:e}=this._sweep,t=this._result,n=(t??(this._isHunt?this._span.result:void 0))?.cautions,i=!this._isHunt||v1(this._hunt.at),r=i?o`<div class="headline">${this._headline(t,e)}</div>`:h,a=!!t&&!e&&this._sweep.answered===this._request;return o`${this._progress(this._sweep)}
      <main @jw-sweep-change=${({detail:l})=>this._change(l.changes)}
        @jw-sweep-file=${({detail:l})=>this._take(l)} @jw-sweep-forget=${()=>this._earlier=void 0}
        @jw-sweep-hunt=${({detail:l})=>this._walk(l.hunt)}
        @jw-sweep-keep=${({detail:l})=>this._keep(l.date)} @jw-sweep-drop=${({detail:l})=>this._drop(l.entry)}
        @jw-sweep-import=${({detail:l})=>this._remember(l.entries.reduce(Pd,this._entries))}
        @jw-sweep-compare=${({detail:l})=>this._compare(l.entry)}>
        <div class="bar">
          ${this._way("judge","Judge a sweep")} ${this._way("hunt","Find it step by step")}
          <button @click=${()=>window.print()}>Print</button>
          <button @click=${this._empty}>Reset</button>
          ${this._undoButtons()}
        </div>
        ${this._isHunt?[this._steps(t,e),r]:[r,this._form(e)]}
        <div class="answer">
          ${i&&t?this._details(t):h}
          <jw-sweep-history .entries=${this._entries} line=${this._line.name} ?keepable=${a}
            .load=${this.loadCharts}></jw-sweep-history>
          ${n?o`<jw-cautions .cautions=${n}></jw-cautions>`:h}
        </div>
      </main>`}_askAnew(){super._askAnew(),this._spanAsked=void 0}get _isHunt(){return this._state.way==="hunt"}_way(e,t){return o`<button id=${e} aria-pressed=${this._state.way===e?"true":"false"}
      @click=${()=>this._change({way:e})}>${t}</button>`}_form(e){return o`<jw-sweep-form class="noprint" .state=${this._state} .document=${this._document} .file=${this._atHand}
      .earlier=${this._earlier} .refusal=${e}></jw-sweep-form>`}_steps(e,t){return o`<jw-sweep-hunt class="noprint" .hunt=${this._hunt} .state=${this._state} .document=${this._document}
      .file=${this._atHand} .span=${this._span.error?void 0:this._span.result} .spanRefusal=${this._span.error}
      .result=${t?void 0:e} .refusal=${t}></jw-sweep-hunt>`}_headline(e,t){if(!this._atHand)return o`<section class="panel prompt"><h2>Give the sweep of ${this._line.name}</h2>
        <p>A one-port file of the whole line, or a two-port file of what the line consists of.</p></section>`;if(!e&&t)return o`<section class="panel prompt" id="refused"><h2>No verdict on ${this._atHand.name}</h2>
        <p>${Ns(t,this._atHand.name)}</p></section>`;if(!e)return o`<p class="waiting quiet">Calculating…</p>`;let n=t?`Out of date: this is the answer before the last change. ${t.message}`:"",{before:i}=this._hunt;return o`${this._isHunt&&i&&this._earlier===i.file?o`<jw-sweep-change .before=${i.result} .after=${e} .load=${this.loadCharts}></jw-sweep-change>`:h}
      <jw-sweep-verdict .result=${e} of="${this._line.name}, ${this._atHand.name}"
        outdated=${n}></jw-sweep-verdict>`}_details({line:e,part:t,echoes:n,steps:i}){let r=this.loadCharts;return o`${e?o`<jw-sweep-line .check=${e} .load=${r}></jw-sweep-line>`:h}
      ${t?o`<jw-sweep-part .part=${t} .load=${r}></jw-sweep-part>`:h}
      ${n?o`<jw-sweep-echoes .check=${n} .load=${r}></jw-sweep-echoes>`:h}
      <details class="panel more noprint" id="how">
        <summary>How this was worked out</summary>
        <jw-steps .steps=${i} .catalogue=${this._catalogue.result}></jw-steps>
      </details>`}get _line(){let e=Ls(this._state.of,this._document);return Zd(this._state.of)?{...e,request:tt(e.request,this.station,this.vocabulary)}:e}get _atHand(){return this._file??this._line.file}get _result(){let{answered:e,result:t}=this._sweep;return this._atHand&&e?.touchstone===this._atHand.text&&e.elements===this._line.request.elements?t:void 0}get _request(){if(!this._atHand)return;let{end:e,length_tolerance:t,window_shape:n,velocity_factor:i}=this._state,a=[...[this._state.of,e,t,n,i],this._document,this.station,this._atHand,this._earlier],l=this._parts;return(!l||a.some((d,u)=>d!==l[u]))&&(this._parts=a,this._made=U1(this._state,this._line,this._atHand,this._earlier)),this._made}_ask(){this._askSpan(),!(this._request===void 0||this._request===this._asked)&&(this._asked=this._request,this._sweep.askNext(this._request),["initial","error"].includes(this._catalogue.status)&&this._catalogue.ask({}))}_askSpan(){if(!this._isHunt)return;let e=D1(this._state,this._line),t=JSON.stringify(e);t!==this._spanAsked&&(this._spanAsked=t,this._span.askNext(e))}_walk(e){e.before||(this._earlier=void 0),this._hunt=e,this._rememberHunt()}_rememberHunt(){let{at:e,before:t}=this._hunt,n=t?.file??this._file??null,i=ac.remember(Z,{of:this._state.of,at:e,file:n});this._notice(i&&{text:i})}_recallHunt(){let e=ac.recalled(Z).document;!this._isHunt||!e||e.of!==this._state.of||(this._file=e.file??void 0,this._hunt={at:e.at})}_change(e){"of"in e&&this._forget();let t=Et(e.of)?{end:this._first.end}:{};super._change({...e,...t},{isStep:!("way"in e)})}turn(e){let{of:t}=this._state,n=super.turn(e);return this._state.of!==t&&this._forget(),n}_empty(){this._state.of!==this._first.of&&this._forget(),this._reset()}_forget(){Object.assign(this,{_file:void 0,_earlier:void 0,_asked:void 0}),this._hunt={at:this._hunt.at},this._sweep.forget()}_take({name:e,file:t}){if(e==="earlier"){this._earlier=t;return}if(e==="again"){let n=this._hunt.before??{file:this._atHand,result:this._result};Object.assign(this,{_file:t,_earlier:n.file,_hunt:{at:"compare",before:n}}),this._rememberHunt();return}Et(this._state.of)&&this._change({of:K1(this._document.current)}),this._hunt={at:this._hunt.at},this._file=t,this._isHunt&&(this._earlier=void 0,this._rememberHunt())}_compare({name:e,date:t,text:n}){this._earlier={name:`${e}, ${t}`,text:n}}_drop(e){this._remember(this._entries.filter(t=>t!==e))}_keep(e){let t=o1({date:e,line:this._line.name,file:this._atHand,result:this._result});this._remember(Pd(this._entries,t))}_remember(e){this._sweeps.put(e);let{problem:t}=this._sweeps;this._notice(t&&{text:t}),this.requestUpdate()}_restore(e){let{of:t}=this._state;this._document=Pe.recalled(Z,this.vocabulary.fields).document??Xe;let n=super._restore(e);return this._state.of!==t&&this._forget(),n}};customElements.define("jw-sweep-view",Bn);var X1=()=>({"sweep.end":{label:"The line ended in",options:{short:"a short",open:"nothing (open)",matched:"a matched load",antenna:"the antenna of the line"}},"sweep.length_tolerance":{label:"Lengths are right within",factor:.01,unit:"%"},"sweep.window_shape":{label:"Window shape",step:.5},"sweep.length_m":{label:"About how long",unit:"m"},"sweep.velocity_factor":{label:"Velocity factor of the cable",unit:""},"sweep.lowest_hz":{label:"Analyser from",factor:1e6,unit:"MHz"},"sweep.highest_hz":{label:"Analyser up to",factor:1e6,unit:"MHz"},"sweep.most_points":{label:"Points at most",unit:""}});var J1={id:Bn.view,label:"Sweep",fields:n1,words:X1,upright:!0,element:({transport:s,stage:e,loadCharts:t})=>o`<jw-sweep-view class="view" .transport=${s} .stage=${e}
      .loadCharts=${t}></jw-sweep-view>`};var Hn=[_f,a0,Cp,fm,z0,J1],Ps=s1;var oc=matchMedia("(prefers-color-scheme: dark)"),Z1="jointwise-theme",H3={metric:{label:"Metric",title:"Metres, millimetres, °C, N·m"},us:{label:"US",title:"Feet, inches, °F, in-lb"}};function F3(){try{return localStorage.getItem(Z1)??void 0}catch{return}}var lc=class extends b({view:{type:String},packs:{type:Number},open:{type:Boolean},station:{type:String},units:{type:String},_theme:$(c)}){static styles=[_,g`
      header {
        display: flex; flex-wrap: wrap; gap: 4px 14px; align-items: center; padding: 8px 16px; background: var(--card);
      }
      svg { width: 34px; height: 34px; flex: none; }
      h1 { margin: 0; font-size: 1.35rem; letter-spacing: -0.02em; line-height: 1; }
      p { flex: 1 1 13rem; color: var(--soft); font-size: 0.85rem; line-height: 1.3; text-wrap: balance; }
      nav, .switches { display: flex; gap: 6px; }
      .switches { margin-left: auto; }
      nav button { margin-left: -7px; border-radius: 0; font-weight: 600; }
      nav button:first-child { margin-left: 0; border-radius: var(--round) 0 0 var(--round); }
      nav button:last-child { border-radius: 0 var(--round) var(--round) 0; }
      [aria-current] { background: var(--accent); border-color: var(--accent); color: var(--accent-ink); }
      button { font-size: 0.85rem; padding: 0 12px; }
      .units { display: flex; }
      .units button { padding: 0 9px; }
      .units button:first-child { border-radius: var(--round) 0 0 var(--round); }
      .units button:last-child { margin-left: -1px; border-radius: 0 var(--round) var(--round) 0; }
      /* two rows: the page's switches beside its name, the views below; the units are among the station's fields */
      @media (max-width: 640px) {
        header { gap: 6px 8px; padding: 6px 10px; }
        h1 { font-size: 1.15rem; }
        svg { width: 26px; height: 26px; }
        .switches { gap: 4px; }
        .switches button { padding: 0 6px; font-size: 0.8rem; }
        /* where letters are large it scrolls inside itself; the padding is for the ring around what has the focus */
        nav { order: 3; flex: 1 1 100%; margin: -5px; padding: 5px; overflow-x: auto; }
        nav button { flex: 1 0 auto; padding: 0 6px; white-space: nowrap; }
        p, .units { display: none; }
      }
      @media (max-width: 380px) {
        header { gap: 6px 4px; padding: 6px; }
        h1 { font-size: 1rem; }
        svg { display: none; }
        .switches { gap: 2px; }
        .switches button { padding: 0 2px; font-size: 0.75rem; }
        nav button { padding: 0 3px; font-size: 0.75rem; }
      }
      @media print {
        header { padding: 0 0 2mm; }
        nav, .switches { display: none; }
        h1 { font-size: 13pt; }
        p { font-size: 8pt; }
      }
    `];constructor(){super(),this.station="",this._turned=()=>this.requestUpdate(),this._theme=F3()}connectedCallback(){super.connectedCallback(),oc.addEventListener("change",this._turned)}disconnectedCallback(){super.disconnectedCallback(),oc.removeEventListener("change",this._turned)}willUpdate(){this._theme&&(document.documentElement.dataset.theme=this._theme)}render(){let e=this.packs>0?o` <b>${this.packs}</b><span class="unseen"> in force</span>`:h;return o`<header>
      <svg viewBox="0 0 32 32" aria-hidden="true">
        <circle cx="16" cy="16" r="15" fill="#1f5690"></circle>
        <circle cx="16" cy="16" r="11" fill="#f8e8c8"></circle>
        <circle cx="16" cy="16" r="4.8" fill="#bf8031"></circle>
      </svg>
      <h1>Jointwise</h1>
      <nav aria-label="Views">
        ${Hn.map(({id:t,label:n})=>o`<button data-view=${t} aria-current=${t===this.view?"page":h}
              @click=${()=>x(this,"jw-view",{view:t})}>${n}</button>`)}
      </nav>
      <p>How much power a coaxial joint stands, band by band.</p>
      <div class="switches">
        <button id="station" aria-expanded=${this.open} title=${this.station||h}
          @click=${()=>x(this,"jw-station")}>Station</button>
        <button id="packs" aria-current=${this.view===Ps.id?"page":h}
          @click=${()=>x(this,"jw-view",{view:Ps.id})}>Packs${e}</button>
        <button id="methods" @click=${()=>x(this,"jw-methods")}>Method</button>
        <span class="units" role="group" aria-label="Units">
          ${Object.entries(H3).map(([t,n])=>o`<button id=${t} aria-pressed=${t===this.units} title=${n.title}
                @click=${()=>x(this,"jw-units",{units:t})}>${n.label}</button>`)}
        </span>
        <button id="theme" aria-pressed=${this._dark} @click=${this._turn}>Dark</button>
      </div>
    </header>`}get _dark(){return this._theme?this._theme==="dark":oc.matches}_turn(){this._theme=this._dark?"light":"dark";try{localStorage.setItem(Z1,this._theme)}catch{let e="This browser keeps nothing for the page, so the choice of light or dark ends when it is closed.";this.dispatchEvent(new CustomEvent("jw-notice",{detail:{text:e},bubbles:!0,composed:!0}))}}};customElements.define("jw-masthead",lc);var dc=class extends b({text:{type:String},link:{type:String},action:m(c)}){static styles=[_,g`
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
      ${this.link?o`<input readonly aria-label="Link to this view" .value=${this.link} @focus=${e=>e.target.select()}>`:h}
      ${this.action?o`<button id="notice-action" @click=${this.action.run}>${this.action.words}</button>`:h}
      <button @click=${this._dismiss}>Close</button>
    </div>`:o`<span role="status"></span>`}_dismiss(){this.dispatchEvent(new CustomEvent("jw-dismiss",{bubbles:!0,composed:!0}))}};customElements.define("jw-notice",dc);var U3=["station","lines","kit","packs","sweeps"],D3="jointwise-",Kr="jointwise station",Vr=1,G3=/<script type="application\/json" id="carried">([\s\S]*?)<\/script>/;function Q1(s){let e;try{e=JSON.parse(G3.exec(s)?.[1]??s)}catch{throw new RangeError("The file is neither a station file nor a page saved here.")}if(e===null)throw new RangeError("This page was saved without a station in it.");e.format!==Kr&&F("format",e.format,`"${Kr}"`),e.version!==Vr&&F("version",e.version,`${Vr}; this page is older than the file`);let{name:t,date:n,kept:i}=e;return D("kept",i),{format:Kr,version:Vr,name:ae("name",t,60),date:ae("date",n,10),kept:i}}function e2(s){let e=s.getElementById("carried");return e?JSON.parse(e.textContent??"null"):null}function t2(s,e,t,n){let i=U3.map(d=>[d,JSON.parse(s.getItem(D3+d)??"null")]),r=Object.fromEntries(i.filter(([,d])=>d!==null)),a={format:Kr,version:Vr,name:e,date:t,kept:r};return n&&JSON.stringify({...a,date:n.date})===JSON.stringify(n)?n:a}function s2(s,e,t,{kept:n},i=[]){let a=Object.entries(n).filter(([u])=>u in s).map(([u,p])=>({key:u,theirs:K3(s[u].kept,u,p,t)})),l=[],d="";for(let{key:u,theirs:p}of a){let{kept:f,nothing:y}=s[u],{document:w}=f.recalled(e,t),v=JSON.stringify(w)===JSON.stringify(p);if(w===void 0||i.includes(u))d||=f.remember(e,p);else{if(v)continue;y===void 0?l.push(u):d||=f.remember(e,f.merged({base:y,mine:w,theirs:p}))}}return{asks:l,problem:d}}function K3(s,e,t,n){try{return s.checked(t,n)}catch(i){throw i instanceof RangeError?i:new RangeError(`The ${e} of the file can’t be read.`,{cause:i})}}var n2=`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
{{policy}}
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="description" content="How much power a coaxial joint stands, family by family and band by band, with the derivation of every number.">
<title>{{title}}</title>
{{head}}
</head>
<body>
<jw-app>{{tables}}</jw-app>
{{carried}}
{{code}}
{{payload}}
<footer class="licences">
<p>Jointwise {{version}}, © 2026 the Jointwise developers, is free software under the MIT licence. This page holds Pyodide (MPL 2.0),
Python (PSF licence), NumPy, msgspec and Lit (BSD licences), culori, noble-hashes, plotly.js and uqr (MIT licences).</p>
{{licences}}
</footer>
</body>
</html>
`;var Y3=Symbol.for("jointwise text"),i2=s=>s[Y3]??s.value;var r2=`<details id="licences">
  <summary>Licences</summary>
  <pre>They lie packed in this page; with scripts on they are unpacked here.</pre>
</details>
`;var U=s=>String(s).replaceAll("&","&amp;").replaceAll("<","&lt;").replaceAll(">","&gt;").replaceAll('"',"&quot;"),J3={contact:"con",cable:"cab",voltage:"vol"},a2=s=>s?`<sup>${U(s)}</sup>`:"";function o2(s){let e=U(Dt(s));if(s.refusedBy)return`<td data-step=refused>${e}`;if(s.margin===null)return`<td data-step=holds>${e}${a2(ws(s))}`;let t=`<small>${J3[s.limit]}${s.undecided?"?":""}</small>`;return`<td data-step=${et(s)}>${e}${t}${a2(ws(s))}`}function Yr(s,e,t){let n=e.map(r=>`<th scope=col>${U(r)}`).join(""),i=t.map(([r,...a])=>`<tr><th scope=row>${U(r)}${a.map(l=>`<td>${U(l)}`).join("")}`);return`<div class=scroll><table class=plain><caption>${U(s)}</caption><thead><tr>${n}<tbody>${i.join("")}</table></div>`}var rs=s=>`<ul>${s.map(e=>`<li>${U(e)}`).join("")}</ul>`;var Z3=/\{\{([a-z_]+)\}\}/,Q3=s=>JSON.stringify(s).replaceAll("<","\\u003c"),ey=s=>[`<data id="${s.id}" hidden value="`,i2(s),'"></data>'];function l2(s,{title:e,tables:t,carried:n}){let i=u=>s.querySelector(u),r=u=>i(u).textContent,a=[...s.querySelectorAll('data[id^="part-"]')].flatMap(u=>[`
`,...ey(u)]),l={policy:`<meta http-equiv="Content-Security-Policy" content="${i("[http-equiv]").getAttribute("content")}">`,title:U(e),head:`<link rel="icon" href="${i("link[rel=icon]").getAttribute("href")}">
<style>${r("style")}</style>`,tables:t,carried:`<script type="application/json" id="carried">${Q3(n)}<\/script>`,code:`<script type="application/json" id="payload">${r("#payload")}<\/script>
<script>${r("body > script:not([type])")}<\/script>`,payload:a.slice(1),version:z.version,licences:r2.trimEnd()},d=n2.split(Z3).map((u,p)=>p%2?l[u]:u);return new Blob(d.flat(),{type:"text/html"})}var ty="<p>0 dB is at the limit, more is room left. After the number, what limits it: con, heat of the contact; cab, heat of the cable; vol, voltage; ? where sources differ on which side of the limit it lies. Raised signs: f above the customary frequency, w weather, v vibration, s more swaps than it is good for, c cable, t cold, m match in doubt, ↓ a power figure from memory is lower. RL 26: in receive, return loss 26 dB, enough. A refused cell says why: RL 8, return loss 8 dB, less than asked for; freq, no published figure so high; TE11, above the cutoff; rx only; hot; wet.</p>";function d2(){let s=t=>t>0&&t<Oe.length-1?" dB":"",e=Oe.map((t,n)=>`<td data-step=${n}>${Ki(n)}${s(n)}</td>`).join("");return`<section><h2>Reading the tables</h2>${ty}<table class=plain><tr>${e}</tr></table></section>`}function c2({heading:s,words:e,matrix:t}){let n=t.columns.map(({name:a})=>`<th scope=col>${U(a)}`).join(""),i=a=>t.columns.map((l,d)=>o2(yt(t,a,d,0))).join(""),r=t.families.map(({name:a},l)=>`<tr><th scope=row>${U(a)}${i(l)}`).join("");return`<section><h2>${U(s)}</h2><p>${U(e)}</p><div class=scroll><table class=plain><caption>Margin in dB, ${U(s)}</caption><thead><tr><th scope=col>Family${n}<tbody>${r}</table></div></section>`}var u2=s=>`<section><h2>Before you work on it</h2>${rs(s)}</section>`;var Fn="☐ ",h2="–",cc=(s,e)=>s==null?h2:e(s),hc=s=>`${s.toFixed(2)} dB`,sy=({name:s,date:e,words:t})=>`<h1>${U(s||"My station")}</h1><p>${U(e)}. ${U(t)}</p><p>Tables of this station as it was saved; with scripts on, the live page stands here.</p>`;function ny(s,e){let t=s.refusal||cc(s.margin_db,r=>`${E(r)} dB`),n=s.binding?_s[s.binding]??"Rated power":h2,i=cc(s.largest_power_w,r=>A(Je(r,3)));return[`${e+1} ${s.name}`,t,n,i,cc(s.loss_db,hc)]}function iy({name:s,line:e}){let t=["Part","Margin","Limited by","Largest safe power","Loss"],n=`At ${O(e.frequency_hz)} with ${A(e.power_w)}`;return`<section><h2>Line: ${U(s)}</h2><p>${U(e.verdict)}</p><p>${U(n)}: loss ${hc(e.loss_db)}, SWR at the transmitter ${e.input.vswr.toFixed(2)}.</p>${Yr(`Parts of ${s}, from the transmitter`,t,e.parts.map(ny))}</section>`}var uc=s=>s.map(({text:e})=>e);function ry(s){let e=(l,d)=>d.length>0?`<p><b>${U(l)}</b></p>${rs(d)}`:"",{inspection:t,label:n,sealing:i,torque:r}=s,a=t.due?`Next inspection ${t.due}.`:`Inspect every ${t.interval_months} months.`;return`<details><summary>${U(s.heading)}</summary>`+e("Tools",uc(s.tools))+e("Steps",s.steps.map(({at:l,text:d})=>Fn+(l?`${l}: ${d}`:d)))+e("Tightening",r.tightened?[r.sentence]:[])+e("Sealing",[i.sentence,...i.layers.map(({text:l})=>Fn+l)])+e("Expect",[`${O(n.frequency_hz)}: loss ${hc(n.expected_loss_db)}, return loss at least ${n.least_return_loss_db.toFixed(0)} dB`])+e("Inspection",[a,...uc(t.checks)])+"</details>"}var ay=({name:s,sheets:e})=>`<section><h2>Fitting sheets: ${U(s)}</h2>${e.joints.map(ry).join("")}</section>`;function oy({ports:s,answer:e}){let t=e.adapters.map(({name:i,count:r})=>[`${Fn}${i}`,r]),n=e.pairs.map(({ports:[i,r],joined:a})=>[`${s[i]} to ${s[r]}`,a===null?"can’t be joined":a.adapters.map(({name:l})=>l).join(", ")||"directly"]);return`<section><h2>Kit</h2><p>${U(e.verdict)}</p>`+(t.length>0?Yr("Adapters to carry",["Adapter","How many"],t):"")+`${Yr("How each pair is joined",["Pair","By"],n)}</section>`}function ly({lines:s,kit:e}){let t=s.flatMap(({name:d,sheets:u})=>u.joints.map(p=>({name:d,joint:p}))),n=new Set(t.flatMap(({joint:d})=>uc(d.tools))),i=(e?.answer.adapters??[]).map(({name:d,count:u})=>`${u} × ${d}`),r=new Set(t.map(({joint:d})=>`A spare pair of ${d.family_name}`)),a=[...i,...n,...r].map(d=>Fn+d),l=t.map(({name:d,joint:u})=>`${Fn}${d}, ${u.heading}: looked at, tightened, dry`);return a.length+l.length===0?"":"<section><h2>Checklist</h2>"+(a.length>0?`<h3>To pack</h3>${rs(a)}`:"")+(l.length>0?`<h3>On arrival, before power</h3>${rs(l)}`:"")+"</section>"}function m2(s){let{heading:e,words:t,matrix:n,lines:i,kit:r,refused:a,cautions:l}=s;return[sy(s),a.length>0?`<section><h2>Not computed</h2>${rs(a)}</section>`:"",n?d2()+c2({heading:e,words:t,matrix:n}):"",...i.map(iy),r?oy(r):"",ly(s),...i.map(ay),u2(l)].join("")}var dy={interfaces:()=>!0,cables:()=>!0,bands:({regions:s})=>Object.keys(s).length>0,modes:({duty_factor:{value:s}})=>Number.isFinite(s)},Xr=s=>typeof s=="string";function Ws(s){let e=JSON.parse(s),t=Object.entries(dy).every(([n,i])=>(e[n]??[]).every(r=>Xr(r.id)&&Xr(r.name)&&i(r)));if(!Xr(e.id)||!Xr(e.name)||!t)throw new TypeError("no pack");return{text:s,id:e.id,name:e.name}}var cy={key:"jointwise-packs",blocked:"This browser keeps nothing for the page: your packs end when it is closed. Keep their files.",full:"This browser has no room for all of your packs: they end when the page is closed. Keep their files.",spoilt:"The packs kept in this browser could not be read and were set aside. Save them as a file to look for what is left."},as=new fe(cy,({own:s,server:e})=>({own:s.map(({text:t,on:n,refused:i})=>({...Ws(t),on:n===!0,refused:String(i??"")})),server:e.map(({text:t})=>Ws(t))}),({base:s,mine:e,theirs:t})=>({own:Ee({base:s.own,mine:e.own,theirs:t.own},({id:n})=>n),server:e.server})),Jr=class{server=[];own=[];problem="";spoilt;#e;#t;#s=new Set;constructor(e){this.#e=e;let{document:t,problem:n,spoilt:i}=as.recalled(e);Object.assign(this,t,{problem:n,spoilt:i}),this.#t={own:this.own,server:this.server}}follow(){as.listen(()=>{let e=JSON.stringify(this.own);this.#n(),JSON.stringify(this.own)!==e&&this.#r()})}listen(e){return this.#s.add(e),()=>this.#s.delete(e)}get inForce(){return[...this.server,...this.own.filter(({on:e})=>e)]}get hasOwn(){return this.own.some(({on:e})=>e)}with(e,t){let n;try{({id:n}=Ws(e))}catch{}return[...mc(this.inForce.filter(i=>i.id!==n||this.server.includes(i))),{label:t,text:e}]}put(e){let t={...Ws(e),on:!0,refused:""},n=this.own.findIndex(({id:i})=>i===t.id);this.own=n===-1?[...this.own,t]:this.own.with(n,t),this.#i()}turn(e,t,n=""){this.own=this.own.map(i=>i.id===e.id?{...i,on:t,refused:n}:i),this.#i()}bringBack(e,t){this.own=Ee({base:e,mine:t,theirs:this.own},({id:n})=>n),this.#i()}remove(e){this.own=this.own.filter(({id:t})=>t!==e.id),this.#i()}takeServer(e){let t=e.map(Ws);JSON.stringify(t)!==JSON.stringify(this.server)&&(this.server=t,this.#i())}#n(){let{document:e}=as.recalled(this.#e);if(e===void 0)return;let{own:t,server:n}=as.merged({base:this.#t,mine:{own:this.own,server:this.server},theirs:e});Object.assign(this,{own:t,server:n}),this.#t=e}#i(){this.#n();let e={own:this.own,server:this.server};this.problem=as.remember(this.#e,e),this.problem===""&&(this.#t=e),this.#r()}#r(){for(let e of this.#s)e()}},mc=s=>s.map(({name:e,text:t})=>({label:e,text:t}));var p2={station:{kept:rn},lines:{kept:Pe,nothing:{lines:[],current:0}},kit:{kept:vs},packs:{kept:as,nothing:{own:[],server:[]}},sweeps:{kept:Gr,nothing:[]}};async function f2(s,e,t,n,{name:i,date:r}){let{fields:a,first:l,lists:d}=n,u=[],p=(Se,at,Kn)=>s.ask(at,Kn).catch(({message:Bs})=>(u.push(`${Se}: ${Bs}`),null)),{document:{lines:f}=Xe}=Pe.recalled(e,a),{document:y=wn}=vs.recalled(e,a),w=xi({},t,l.matrix),v=await p("Matrix","matrix",qe({...w,powers_w:[w.power_w]},n)),S=[];for(let{name:Se,request:at}of f){let Kn=tt(at,t,n),Bs=await p(Se,"line",Kn),L2=er({station:t.name,date:""},Kn),wc=Bs&&await p(`${Se}, fitting`,"fitout",L2);Bs&&wc&&S.push({name:Se,line:Bs,sheets:wc})}let q=rr(y,t,n),K=await p("Kit","kit",q),rt=Se=>n.spoken(Se,w[Se]);return{name:i,date:r,words:[rt("mode"),`SWR ${rt("vswr")}`,rt("ambient_temperature_c"),rt("exposure")].join(", "),heading:`Margins at ${n.spoken("power_w",w.power_w)}`,matrix:v,lines:S,kit:K&&{ports:xs(d.families,y.ports),answer:K},refused:u,cautions:z.cautions}}var uy=60,Un=e2(document),hy=()=>new Date().toLocaleDateString("sv-SE"),g2=(s,e)=>`${["jointwise",s.toLowerCase().replace(/[^\p{L}\p{N}]+/gu,"-").replace(/^-|-$/g,"")].filter(Boolean).join("-")}.${e}`,pc=class extends b({transport:m(c),file:{type:String},_name:$(c),_busy:$(c),_asked:$(c)},$e){static styles=[_,T,_t,g`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: 12px; margin-top: 12px; }
      .panel { display: grid; gap: 8px; justify-items: start; background: none; }
      h2 { margin-bottom: 0; }
      .row { display: flex; flex-wrap: wrap; gap: 8px; }
      .row button { font-size: 0.85rem; padding: 0 11px; }
      .name { display: grid; gap: 3px; width: 100%; max-width: 20rem; font-size: 0.8rem; font-weight: 600; }
    `];constructor(){super(),this.file="",this._busy=!1,this._name=Un?.name??""}render(){return o`<section class="panel">
        <h2>Save my page</h2>
        <p class="quiet">A page as one file, with your station, lines, kit, packs and sweeps in it. It opens with no
          network, and its tables can be read with scripts off. A station file holds the same and is small.</p>
        <label class="name">Name on it<input id="save-name" maxlength=${uy} autocomplete="off"
          .value=${this._called} @input=${({target:e})=>this._name=e.value}></label>
        <div class="row">
          <button id="save-page" ?disabled=${this._busy} @click=${this._savePage}>
            ${this._busy?"Calculating…":"Save my page"}</button>
          <button id="save-station" @click=${this._saveStation}>Save as a station file</button>
        </div>
        ${this._carriedNote()}
      </section>
      <section class="panel">
        <h2>Open what was saved</h2>
        <p class="quiet">What is in it comes in beside what you have: lines, packs and sweeps by their names. Nothing of
          yours is overwritten without asking.</p>
        <label class="pick">Open a saved page or station file<input id="open-station" type="file" accept=".json,.html"
          @change=${this._picked}></label>
        ${this._asked?this._question():h}
      </section>`}get _called(){return this._name||this.station.name}_carriedNote(){return Un?o`<p id="carried-note">This page carries “${Un.name}” of ${Un.date}. What you change here stays
      with this page in this browser; save the page again to take it along.</p>`:h}_question(){let{asks:e}=this._asked,t=e.join(" and ");return o`<div class="row" role="alert">
      <p>This browser has a ${t} of its own. Replace it with the one of the file?</p>
      <button id="replace-own" @click=${()=>this._takeIn(e)}>Replace mine</button>
      <button id="keep-own" @click=${this._done}>Keep mine</button>
    </div>`}_gathered(){return t2(Z(),this._called.trim(),hy(),Un)}async _savePage(){this._busy=!0;try{let e=this._gathered(),{name:t,date:n}=e,i=this.file?await my(this.file):document,r={name:t,date:n},a=await f2(this.transport,Z,this.station,this.vocabulary,r),l=[t,"Jointwise"].filter(Boolean).join(" · ");ja(g2(t,"html"),l2(i,{title:l,tables:m2(a),carried:e}))}catch(e){this._say(`The page could not be saved: ${e instanceof Error?e.message:e}`)}this._busy=!1}_saveStation(){try{let e=this._gathered();H(g2(e.name,"json"),"application/json",JSON.stringify(e,null,1))}catch{this._say("This browser keeps nothing for the page, so there is nothing to put into a file.")}}async _picked({target:e}){let[t]=e.files;if(e.value="",!!t)try{this._asked={carried:Q1(await t.text()),asks:[]},this._takeIn([])}catch(n){if(!(n instanceof RangeError))throw n;this._asked=void 0,this._say(`Nothing was changed. ${n.message}`)}}_takeIn(e){let{carried:t}=this._asked,{asks:n,problem:i}=s2(p2,Z,this.vocabulary.fields,t,e);if(i)return this._say(i);n.length>0?this._asked={carried:t,asks:n}:this._done()}_done(){this._asked=void 0,x(this,"jw-taken-in",{})}_say(e){x(this,"jw-notice",{text:e})}};async function my(s){let e=await fetch(s);if(!e.ok)throw new Error("the server did not hand it out.");return new DOMParser().parseFromString(await e.text(),"text/html")}customElements.define("jw-saving",pc);var b2=g`
  main { display: grid; grid-template-columns: minmax(0, 1fr); gap: 10px; padding: 10px 8px 40px; }
  jw-scenario {
    padding: 10px 12px; overflow: hidden; background: var(--card);
    border: 1px solid var(--line); border-radius: var(--round);
  }
  .bar { display: flex; flex-wrap: wrap; gap: 8px 16px; align-items: end; justify-content: space-between; }
  .tools .bar { gap: 6px; justify-content: flex-start; }
  .tools button { font-size: 0.85rem; padding: 0 10px; }
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
    jw-scenario, .bar, .trouble { display: none; }
    .onpaper { display: block; }
    h2.onpaper { font-size: 9pt; }
    .below { gap: 2mm; break-inside: avoid; }
  }
`;var py=s=>s instanceof HTMLElement&&s.matches('textarea, input:not([type]), input[type="text"], input[type="url"]');function _2(s){let e;return s.addEventListener("input",t=>e=t.composedPath()[0]),s.addEventListener("jw-change",()=>e=void 0,!0),s.addEventListener("focusout",()=>e=void 0),t=>py(t.composedPath()[0])&&t.composedPath()[0]===e}var Gn=[...Hn,Ps],[w2]=Hn,fc=Gn.map(({id:s})=>s),Dn={text:"",link:"",action:void 0},gc=class extends b({transport:m(c),shelf:m(c),stage:{type:String},file:{type:String},loadCharts:m(c),loadEmbed:m(c),_view:$(c),_units:$(c),_notice:$(c),_isOpen:$(c)}){static styles=[_,b2];constructor(){super(),this.stage="",this.file="",this._notice=Dn,this._isOpen=!1,this._isTyping=_2(this),this._pressed=e=>this._key(e),this.version=0,this._vocabulary=new Ot(this,{context:Zs}),this._station=new Ot(this,{context:Qs}),this._view=cs(location.hash.slice(1),fc),this._fragments=Object.fromEntries(Gn.map(e=>[e.id,e===w2?"":`view=${e.id}`])),this._spoken=c,this._units="metric",this._travelled=()=>this._view=cs(location.hash.slice(1),fc),this._left=({oldURL:e})=>this._keep(new URL(e).hash.slice(1)),Ah(this,()=>Gn.find(({id:e})=>e===this._view)?.label??"the page")}connectedCallback(){super.connectedCallback(),window.addEventListener("popstate",this._travelled),window.addEventListener("hashchange",this._left),window.addEventListener("keydown",this._pressed)}disconnectedCallback(){super.disconnectedCallback(),window.removeEventListener("popstate",this._travelled),window.removeEventListener("hashchange",this._left),window.removeEventListener("keydown",this._pressed)}willUpdate(e){this.shelf&&e.has("shelf")&&(this.shelf.listen(()=>{this.version++,this._layPacks(),this.requestUpdate()}),this._layPacks());let t=e.has("_units");t&&rh(this._units),t&&this.shelf&&this._speak(),this.transport&&(t||e.has("transport"))&&(this._spoken=Gu(this.transport,this._units))}_layPacks(){this._speak(),this._station.value||this._beginStation(this._vocabulary.value),this._tellPacks()}_speak(){let e=[...Gn,Ku];this._vocabulary.setValue(new zi(z,e,this.shelf.inForce,this._units))}_beginStation({fields:e}){let t=new Mi(Z,e);this._station.setValue(t),t.follow();let n=()=>this._units=t.present.units;n(),this._tellStation(),t.listen(i=>{n(),i||this._tellStation()})}_tellStation(){let{problem:e,spoilt:t}=this._station.value;if(e===this._told)return;this._told=e;let n=()=>H("jointwise-station-unread.txt","text/plain",t);e&&(this._notice={...Dn,text:e,action:t?{words:"Save it",run:n}:void 0})}_tellPacks(){let{problem:e,spoilt:t}=this.shelf,i=t?{words:"Save them",run:()=>H("jointwise-packs-unread.txt","text/plain",t)}:void 0;e&&(this._notice={...Dn,text:e,action:i})}render(){let{_notice:e}=this,{file:t,loadCharts:n,loadEmbed:i,shelf:r,stage:a,version:l}=this,d={transport:this._spoken,file:t,loadCharts:n,loadEmbed:i,shelf:r,stage:a,version:l},u=Gn.find(({id:p})=>p===this._view);return o`<div class="page" data-view=${u.id} ?data-upright=${u.upright}
      @jw-notice=${({detail:p})=>this._notice={...Dn,...p}}
      @jw-dismiss=${()=>this._notice=Dn}>
      <jw-masthead .view=${u.id} packs=${this.shelf?.inForce.length??0} @jw-view=${this._turned}
        @jw-methods=${this._methods} @jw-station=${()=>this._isOpen=!this._isOpen}
        units=${this._units} @jw-units=${({detail:p})=>this._station.value.change(Ft,{units:p.units})}
        ?open=${this._isOpen} station=${this._station.value?.present.name??""}></jw-masthead>
      ${ma(u===Ps?u.element(d):o`${Gc(this.version,ma(u.element(d)))}`)}
      <jw-sheet class="station" ?beside=${this._isOpen} .heading=${this._isOpen?"Station":""}
        @jw-close=${this._close}>${this._isOpen?o`<jw-station-panel></jw-station-panel>
            <jw-saving .transport=${this._spoken} .file=${this.file} @jw-taken-in=${this._readAnew}></jw-saving>`:h}</jw-sheet>
      <jw-notice .text=${e.text} .link=${e.link} .action=${e.action}></jw-notice>
    </div>`}_readAnew(){location.reload()}_close(e){e.stopPropagation(),this._isOpen=!1}_key(e){let{ctrlKey:t,metaKey:n,shiftKey:i}=e;if(!(t||n)||e.key.toLowerCase()!=="z"||this._isTyping(e))return;e.preventDefault();let r=i?"redo":"undo";this._isOpen?this._station.value.turn(r,Ft):N(this.renderRoot,".view").turn?.(r)}_turned({detail:{view:e}}){if(e===this._view)return;this._keep(location.hash.slice(1));let t=this._fragments[e];history.pushState(Cu,"",t?`#${t}`:location.pathname+location.search),this._view=e}_keep(e){this._fragments[cs(e,fc)]=e}_methods(){this._view===w2.id?N(this.renderRoot,".view").openMethods():location.hash="view=methods"}drawAnew(){let e=this.renderRoot.querySelector(".view");e&&Kc(e),this.requestUpdate()}offerUpdate(e){this._notice={text:"A newer Jointwise is ready.",link:"",action:{words:"Load it",run:e}}}};customElements.define("jw-app",gc);function y2(s){let e,t=()=>new Promise((n,i)=>{let r=document.createElement("script");r.src=s,r.onload=()=>n(window.Plotly),r.onerror=()=>{e=void 0,r.remove(),i(new Error("The chart library could not be loaded."))},document.head.append(r)});return()=>e??=t()}function x2(s){let e,t=async()=>{try{return await import(new URL(s,document.baseURI).href),await(await fetch(s)).text()}catch{throw e=void 0,new Error("The script for other websites could not be loaded.")}};return()=>e??=t()}var fy=15e3;function $2({http:s,worker:e,answers:t}){let n,i;async function r(){Date.now()-i<fy||(i=Date.now(),await t()&&(n=void 0))}async function a(...l){let d=n;try{return await e.ask(...l)}catch(u){throw Tn(u)?(n=void 0,d):u}}return{async ask(...l){if(n)return r(),a(...l);try{return await s.ask(...l)}catch(d){if(!Tn(d))throw d;return n=d,i=Date.now(),a(...l)}}}}function v2(s){return async()=>{try{return(await fetch(new URL("health",s),{cache:"no-store"})).ok}catch{return!1}}}var k2=6e4;function S2(s){return{async ask(e,t,{signal:n}={}){let i=AbortSignal.timeout(k2),r,a;try{r=await fetch(new URL(e,s),{method:"POST",headers:{"Content-Type":"application/json",Accept:"application/json, application/problem+json"},body:JSON.stringify(t),signal:n?AbortSignal.any([n,i]):i}),a=await r.json()}catch{n?.throwIfAborted();let l=i.aborted?`The core gave no answer within ${k2/1e3} seconds; try again.`:"The core cannot be reached; check that it is running, then try again.";throw new qs(l)}if(!r.ok)throw new Be(a);return a}}}function j2({plain:s,worker:e,shelf:t}){return{async ask(n,i,{packs:r,...a}={}){if(r)return e.ask(n,i,{...a,packs:r});let l=t.hasOwn||i.search==="thorough"?e:s;try{return await l.ask(n,i,{...a,packs:mc(t.inForce)})}catch(d){let{field:u,message:p}=d,f=t.own.find(({name:y,on:w})=>w&&u?.startsWith(`${y}: `));if(!f)throw d;return t.turn(f,!1,p),this.ask(n,i,a)}}}}async function E2(s){let e=await fetch(new URL("packs.json",s),{cache:"no-store"});if(!e.ok)throw new Error(`packs.json: ${e.status}`);return(await e.json()).map(({text:t})=>t)}var Zr=s=>s,O2=globalThis.trustedTypes?.createPolicy("jointwise-script",{createScript:Zr,createScriptURL:Zr})??{createScript:Zr,createScriptURL:Zr};function T2(s){let e=URL.createObjectURL(new Blob([s],{type:"text/javascript"}));try{return new Worker(O2.createScriptURL(e))}finally{URL.revokeObjectURL(e)}}async function gy(s){let e=new DecompressionStream("gzip"),t=e.writable.getWriter(),n=t.write(s).then(()=>t.close()),[i]=await Promise.all([new Response(e.readable).arrayBuffer(),n]);return new Uint8Array(i)}async function A2({bytes:s,sha256:e},t){if(Pu(Uu(s))!==e)throw new Error(`part ${t} is not the one this page was built with`);return gy(s)}var Qr=class{#e;#t;#s=!1;constructor({payload:e,createWorker:t=T2,hear:n}){this.#e=n,this.#n(e,t).catch(i=>this.#r(eu(String(i))))}send(e){this.#t?.postMessage(e)}end(){this.#s=!0,this.#t?.terminate()}async#n(e,t){let{worker:n,...i}=await e.read(),r=this.#i(n,t,Object.keys(i)),a=async([l,d])=>{let[u]=await Promise.all([d,r]);this.#s||this.send(Zc(l,u))};await Promise.all([r,...Object.entries(i).map(a)])}async#i(e,t,n){let i=new TextDecoder().decode(await A2(await e,"worker"));if(this.#s)return;let r=l=>this.#r(tu(l.message??"the worker could not be started")),a=t(i);a.onmessage=({data:l})=>this.#r(l),a.onerror=r,a.onmessageerror=r,this.#t=a,this.send(Jc(n))}#r(e){this.#s||this.#e(e)}};var q2=12e4,by=2e4,_y=3e3,wy=1e3,yy=2,xy="The calculation core cannot be started in this browser; only the built-in tables can be shown.",$y="The calculation core broke down over this request; change it, or try again.",vy=s=>`The core gave no answer within ${s} seconds; try again.`;function M2({payload:s,longestS:e,createWorker:t,onProgress:n=()=>{}}){let i=new bc(r=>new Qr({payload:s,createWorker:t,hear:r}),e,n);return{start:()=>i.start(),ask:(r,a,l={})=>i.ask(r,a,l)}}var bc=class{#e;#t;#s;#n=0;#i=[];#r;#a;#o=!1;#u;constructor(e,t,n){this.#e=e,this.#t=t,this.#s=n}ask(e,t,{signal:n,packs:i}){return new Promise((r,a)=>{n?.throwIfAborted();let l=new TextEncoder().encode(JSON.stringify(t)),d={number:++this.#n,operation:e,body:l,packs:i,tries:0,unwanted:!1,resolve:r,reject:a};n?.addEventListener("abort",()=>this.#g(d,n.reason),{once:!0}),this.#i.push(d),this.#l()})}start(){this.#a===void 0&&(this.#a=this.#e(e=>this.#d[e.kind](e)),this.#c(q2,()=>this.#d.died()))}#l(){if(this.#i.length===0||(this.start(),!this.#o||this.#r))return;let e=this.#i.shift();this.#r=e,e.tries++,this.#a?.send(Qc(e.number,e.operation,e.body,e.packs)),this.#c(by,()=>this.#d.died())}#d={stage:({name:e})=>{this.#s(e),this.#o=e===ut,this.#o?this.#m():this.#c(q2,()=>this.#d.died()),this.#l()},unable:({reason:e})=>{console.info(e),this.#s(""),this.#h();for(let t of this.#i.splice(0))t.reject(new qs(xy))},taken:()=>this.#p(),answer:({number:e,body:t})=>this.#f(e,n=>n.resolve(JSON.parse(new TextDecoder().decode(t)))),refused:({number:e,refusal:t})=>this.#f(e,n=>n.reject(new Be(t))),died:({reason:e}={})=>{if(!this.#o)return this.#d.unable({reason:e??"the worker fell silent while starting"});let t=this.#r;this.#h(),t&&!t.unwanted&&(t.tries<yy?this.#i.unshift(t):t.reject(new Be({detail:$y}))),this.#l()}};#p(){let e=this.#r,t=this.#t[e.operation];this.#c(e.unwanted?_y:t*1e3,()=>{this.#h(),e.reject(new Be({detail:vy(t)})),this.#l()})}#f(e,t){let n=this.#r;n?.number===e&&(this.#m(),this.#r=void 0,t(n),this.#l())}#g(e,t){e.reject(t),e.unwanted=!0,e===this.#r?this.#p():this.#i=this.#i.filter(n=>n!==e)}#h(){this.#m(),this.#a?.end(),this.#a=void 0,this.#r=void 0,this.#o=!1}#c(e,t){clearTimeout(this.#u);let n=Math.min(e,wy);this.#u=setTimeout(e>n?()=>this.#c(e-n,t):t,n)}#m(){clearTimeout(this.#u)}};var C2="build",ea=()=>document.querySelector(`meta[name=${C2}]`)?.getAttribute("content")??"",Is=s=>`${s}?${C2}=${ea()}`;function R2(s){let e=async t=>{let n=await fetch(new URL(Is(t),s));if(!n.ok)throw new Error(`${t} is not to be had: ${n.status}`);return n};return{async read(){let{parts:t}=await(await e("payload.json")).json(),n=async({file:i,sha256:r})=>({bytes:new Uint8Array(await(await e(i)).arrayBuffer()),sha256:r});return Object.fromEntries(t.map(i=>[i.name,n(i)]))}}}async function z2(s,e){let{serviceWorker:t}=navigator;if(!t)return;t.addEventListener("message",({data:a,ports:l})=>{a.kind===ru&&l[0].postMessage(ea()),a.kind===iu&&a.build!==ea()&&e(()=>location.reload())}),t.startMessages(),t.controller?.postMessage(nu());let n=await t.register(s),i=()=>{if(!n.waiting)return location.reload();t.addEventListener("controllerchange",()=>location.reload(),{once:!0}),n.waiting.postMessage(su())},r=()=>n.waiting&&t.controller&&e(i);n.addEventListener("updatefound",()=>n.installing?.addEventListener("statechange",r)),r()}var De=document.querySelector("jw-app"),_c=new URL("api/v1/",document.baseURI),N2=M2({payload:R2(new URL("payload/",document.baseURI)),longestS:xc,onProgress:s=>De.stage=s}),ky=$2({http:S2(_c),worker:N2,answers:v2(_c)});De.shelf=new Jr(Z);De.shelf.follow();De.transport=j2({plain:ky,worker:N2,shelf:De.shelf});E2(_c).then(s=>De.shelf.takeServer(s),s=>console.info(String(s)));De.loadCharts=y2(Is("charts.js"));De.loadEmbed=x2(Is("embed.js"));De.file=Is("jointwise.html");z2("service-worker.js",s=>De.offerUpdate(s)).catch(s=>console.info(String(s)));
